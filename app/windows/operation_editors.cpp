#include "app/windows/operation_editors.h"

#include "app/look/card.h"
#include "app/words/say.h"
#include "core/calendar/day.h"
#include "core/phenology/stage.h"

#include <QGridLayout>
#include <QHBoxLayout>

namespace topwire {

namespace {

QHBoxLayout* lineOf(QWidget* field) {
  auto* line = new QHBoxLayout{field};
  line->setContentsMargins(0, 0, 0, 0);
  line->setSpacing(8);
  return line;
}

/// Chosen by what stands behind it; added where it is none of those offered.
void choose(QComboBox& box, const QVariant& data, const QString& name) {
  if (box.findData(data) < 0) box.addItem(name, data);
  box.setCurrentIndex(box.findData(data));
}

QSpinBox* offsetField(const QString& suffix, int most, const QString& name) {
  auto* field = new QSpinBox;
  field->setRange(-most, most);
  field->setSuffix(suffix);
  field->setMinimumWidth(128);
  field->setAccessibleName(name);
  return field;
}

QComboBox* namedBox(const QString& name) {
  auto* box = new QComboBox;
  box->setAccessibleName(name);
  box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  box->setMinimumContentsLength(12);
  return box;
}

}  // namespace

WordsField::WordsField(QWidget* parent)
    : QWidget(parent), english_(new QLineEdit), spanish_(new QLineEdit) {
  english_->setPlaceholderText(tr("in English"));
  spanish_->setPlaceholderText(tr("in Spanish"));
  english_->setAccessibleName(tr("in English"));
  spanish_->setAccessibleName(tr("in Spanish"));
  english_->setObjectName(QStringLiteral("english"));
  spanish_->setObjectName(QStringLiteral("spanish"));
  auto* line = lineOf(this);
  line->addWidget(english_, 1);
  line->addWidget(spanish_, 1);
  setFocusProxy(english_);
}

void WordsField::setWords(const Words& words) {
  english_->setText(QString::fromStdString(words.en));
  spanish_->setText(QString::fromStdString(words.es));
  for (QLineEdit* edit : {english_, spanish_}) edit->setCursorPosition(0);
}

Words WordsField::words() const {
  return {english_->text().trimmed().toStdString(),
          spanish_->text().trimmed().toStdString()};
}

ChoicesField::ChoicesField(const QStringList& names, int columns, QWidget* parent)
    : QWidget(parent) {
  auto* grid = new QGridLayout{this};
  grid->setContentsMargins(0, 0, 0, 0);
  for (const QString& name : names) {
    auto* box = new QCheckBox{name};
    const int at = static_cast<int>(boxes_.size());
    grid->addWidget(box, at / columns, at % columns);
    boxes_.push_back(box);
  }
  grid->setColumnStretch(columns, 1);
  setFocusProxy(boxes_.front());
}

void ChoicesField::setChosen(std::size_t choice, bool chosen) {
  boxes_.at(choice)->setChecked(chosen);
}

bool ChoicesField::isChosen(std::size_t choice) const {
  return boxes_.at(choice)->isChecked();
}

AnchorField::AnchorField(bool none, QWidget* parent)
    : QWidget(parent)
    , kind_(namedBox(tr("What it hangs on")))
    , stage_(namedBox(tr("Stage")))
    , month_(namedBox(tr("Month")))
    , day_(new QSpinBox)
    , season_(namedBox(tr("Season")))
    , work_(namedBox(tr("Other work")))
    , offset_(new QWidget)
    , months_(offsetField(tr(" months"), 60, tr("Months later")))
    , days_(offsetField(tr(" days"), 1000, tr("Days later"))) {
  if (none) kind_->addItem(tr("nothing"), nothing);
  kind_->addItem(tr("a stage"), stage);
  kind_->addItem(tr("the planting day"), planting);
  kind_->addItem(tr("a day of the year"), month);
  kind_->addItem(tr("other work done"), work);
  kind_->setObjectName(QStringLiteral("kind"));
  stage_->setObjectName(QStringLiteral("stage"));
  days_->setObjectName(QStringLiteral("days"));
  months_->setObjectName(QStringLiteral("months"));
  for (const Stage& one : allStages()) stage_->addItem(say(one.name), one.bbch);
  for (unsigned number = 1; number <= 12; ++number)
    month_->addItem(voiceIn(language()).monthName(dayOf(2026, number, 1)),
                    static_cast<int>(number));
  day_->setRange(1, 31);
  day_->setAccessibleName(tr("Day of the month"));
  season_->addItem(tr("of the season"), 0);
  season_->addItem(tr("of the season before"), -1);
  season_->addItem(tr("of the season after"), 1);
  auto* grid = new QGridLayout{this};
  grid->setContentsMargins(0, 0, 0, 0);
  grid->setHorizontalSpacing(8);
  grid->setVerticalSpacing(4);
  grid->addWidget(kind_, 0, 0);
  auto* point = new QHBoxLayout;
  for (QComboBox* box : {stage_, month_, work_}) point->addWidget(box, 2);
  point->addWidget(day_);
  point->addWidget(season_, 1);
  grid->addLayout(point, 0, 1);
  auto* offset = new QHBoxLayout{offset_};
  offset->setContentsMargins(0, 0, 0, 0);
  offset->setSpacing(8);
  offset->addWidget(mutedLabel(tr("and"), TypeSize::body));
  offset->addWidget(months_);
  offset->addWidget(days_);
  offset->addWidget(mutedLabel(tr("later"), TypeSize::body));
  offset->addStretch();
  grid->addWidget(offset_, 1, 0, 1, 2);
  grid->setColumnStretch(1, 1);
  setFocusProxy(kind_);
  connect(kind_, &QComboBox::currentIndexChanged, this, &AnchorField::follow);
  follow();
}

AnchorField::Kind AnchorField::kind() const {
  return static_cast<Kind>(kind_->currentData().toInt());
}

void AnchorField::follow() {
  stage_->setVisible(kind() == stage);
  work_->setVisible(kind() == work);
  for (QWidget* part : {static_cast<QWidget*>(month_),
                        static_cast<QWidget*>(day_),
                        static_cast<QWidget*>(season_)})
    part->setVisible(kind() == month);
  offset_->setVisible(kind() != nothing);
}

void AnchorField::choosePoint(const AnchorPoint& point) {
  if (const auto* on = std::get_if<OnStage>(&point)) {
    choose(*kind_, stage, {});
    choose(*stage_, on->bbch, QString::number(on->bbch));
  } else if (const auto* day = std::get_if<OnMonth>(&point)) {
    choose(*kind_, month, {});
    choose(*month_, static_cast<int>(day->month), {});
    day_->setValue(static_cast<int>(day->day));
    choose(*season_, day->seasonsLater, tr("%1 seasons later").arg(day->seasonsLater));
  } else if (const auto* other = std::get_if<OnCompletion>(&point)) {
    choose(*kind_, work, {});
    const QString id = QString::fromStdString(other->operation);
    choose(*work_, id, id);
  } else {
    choose(*kind_, planting, {});
  }
}

void AnchorField::setAnchor(const std::optional<Anchor>& anchor,
                            const Programme& programme) {
  work_->clear();
  for (const Operation& other : programme.operations)
    work_->addItem(say(other.name), QString::fromStdString(other.id));
  if (anchor)
    choosePoint(anchor->point);
  else
    choose(*kind_, nothing, {});
  months_->setValue(anchor ? anchor->months : 0);
  days_->setValue(anchor ? anchor->days : 0);
  follow();
}

std::optional<Anchor> AnchorField::anchor() const {
  if (kind() == nothing) return std::nullopt;
  AnchorPoint point = OnPlanting{};
  if (kind() == stage) point = OnStage{stage_->currentData().toInt()};
  if (kind() == month)
    point = OnMonth{static_cast<unsigned>(month_->currentData().toInt()),
                    static_cast<unsigned>(day_->value()),
                    season_->currentData().toInt()};
  if (kind() == work) point = OnCompletion{work_->currentData().toString().toStdString()};
  return Anchor{std::move(point), months_->value(), days_->value()};
}

}  // namespace topwire
