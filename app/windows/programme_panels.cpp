#include "app/windows/programme_panels.h"

#include "app/windows/block_words.h"
#include "app/windows/effect_panel.h"
#include "app/windows/operation_editors.h"
#include "app/words/say.h"
#include "core/edit/programme_deeds.h"

#include <QHBoxLayout>
#include <QVBoxLayout>

namespace topwire {

namespace {

QVBoxLayout* cardLines(Card* card) {
  auto* lines = new QVBoxLayout{card};
  lines->setContentsMargins(16, 14, 16, 16);
  lines->setSpacing(10);
  return lines;
}

QLabel* wrapped(QLabel* label) {
  label->setWordWrap(true);
  label->setMinimumWidth(1);
  return label;
}

constexpr int plantingRole = Qt::UserRole;

}  // namespace

ProgrammeCopyPanel::ProgrammeCopyPanel(Session& session, QWidget* parent)
    : Card(QPalette::Light, parent)
    , session_(&session)
    , title_(wrapped(textLabel({}, TypeSize::head, true)))
    , form_(new Form)
    , name_(new WordsField) {
  setObjectName(QStringLiteral("programmeCopy"));
  form_->addWide(QStringLiteral("name"),
                 tr("Its &name"),
                 name_,
                 tr("The Spanish one may stay empty where they are the same"));
  auto* make = new QPushButton{tr("&Make the copy")};
  make->setObjectName(QStringLiteral("makeCopy"));
  make->setProperty("main", true);
  auto* leave = new QPushButton{tr("&Close without copying")};
  leave->setObjectName(QStringLiteral("leaveCopy"));
  auto* buttons = new QHBoxLayout;
  buttons->addWidget(make);
  buttons->addWidget(leave);
  buttons->addStretch();
  auto* lines = cardLines(this);
  lines->addWidget(title_);
  lines->addWidget(
      wrapped(mutedLabel(tr("The copy is this orchard's own: change it as you like. What "
                            "came with Topwire stays as it is."),
                         TypeSize::body)));
  lines->addWidget(form_);
  lines->addLayout(buttons);
  lines->addStretch();
  connect(make, &QPushButton::clicked, this, &ProgrammeCopyPanel::make);
  connect(leave, &QPushButton::clicked, this, &ProgrammeCopyPanel::left);
  for (QLineEdit* edit : name_->findChildren<QLineEdit*>())
    connect(edit, &QLineEdit::returnPressed, this, &ProgrammeCopyPanel::make);
}

void ProgrammeCopyPanel::start(const Programme& original, const std::string& text) {
  text_ = text;
  const std::string base =
      original.id.starts_with("my-") ? original.id : "my-" + original.id;
  id_ = freshProgrammeId(session_->orchard(), session_->shippedProgrammes(), base);
  title_->setText(tr("A copy of %1").arg(say(original.name)));
  name_->setWords({original.name.en + ", ours", original.name.es + ", el nuestro"});
  form_->forgetTouches();
  name_->setFocus(Qt::OtherFocusReason);
}

Checked<Change> ProgrammeCopyPanel::deed() const {
  return addProgramme(
      session_->orchard(), session_->shippedProgrammes(), text_, id_, name_->words());
}

void ProgrammeCopyPanel::make() {
  const std::string id = id_;
  const Problems problems = session_->perform(deed());
  if (problems.empty())
    Q_EMIT made(id);
  else
    form_->showAll(problems);
}

ProgrammePlantingsPanel::ProgrammePlantingsPanel(Session& session, QWidget* parent)
    : Card(QPalette::Light, parent)
    , session_(&session)
    , title_(wrapped(textLabel({}, TypeSize::head, true)))
    , list_(new QListWidget)
    , effect_(new EffectPanel(session, tr("&Have them go by it"))) {
  setObjectName(QStringLiteral("programmePlantings"));
  list_->setObjectName(QStringLiteral("plantingChoices"));
  list_->setAccessibleName(tr("Plantings"));
  auto* lines = cardLines(this);
  lines->addWidget(title_);
  lines->addWidget(wrapped(mutedLabel(
      tr("Tick those that should. To take one away, give it another programme."),
      TypeSize::body)));
  lines->addWidget(list_, 1);
  lines->addWidget(effect_);
  connect(list_, &QListWidget::itemChanged, this, &ProgrammePlantingsPanel::tell);
  connect(effect_, &EffectPanel::kept, this, &ProgrammePlantingsPanel::keep);
  connect(effect_, &EffectPanel::left, this, &ProgrammePlantingsPanel::left);
}

void ProgrammePlantingsPanel::start(const std::string& programme) {
  programme_ = programme;
  const Orchard& orchard = session_->orchard();
  const Programme& named = session_->programmes().at(programme);
  title_->setText(tr("Plantings that go by %1").arg(say(named.name)));
  const QSignalBlocker quiet{list_};
  list_->clear();
  for (const Block* block : blocksInOrder(orchard))
    for (const Planting* planting : plantingsOf(orchard, block->id)) {
      const bool uses = planting->programme == programme;
      auto* item = new QListWidgetItem{tr("%1: %2, %3")
                                           .arg(QString::fromStdString(block->name),
                                                stockText(*planting),
                                                ageText(*session_, *planting))};
      item->setData(plantingRole, QString::fromStdString(planting->code));
      item->setFlags(uses ? Qt::ItemIsSelectable
                          : Qt::ItemIsEnabled | Qt::ItemIsSelectable
                                | Qt::ItemIsUserCheckable);
      item->setCheckState(uses ? Qt::Checked : Qt::Unchecked);
      list_->addItem(item);
    }
  list_->setCurrentRow(0);
  tell();
  list_->setFocus(Qt::OtherFocusReason);
}

Checked<Change> ProgrammePlantingsPanel::deed() const {
  std::vector<PlantingId> chosen;
  for (int i = 0; i < list_->count(); ++i) {
    if (list_->item(i)->checkState() != Qt::Checked) continue;
    const std::string code = list_->item(i)->data(plantingRole).toString().toStdString();
    if (const Planting* planting = plantingByCode(session_->orchard(), code))
      chosen.push_back(planting->id);
  }
  return chooseProgramme(session_->orchard(), session_->programmes(), chosen, programme_);
}

void ProgrammePlantingsPanel::tell() {
  const Checked<Change> change = deed();
  if (!change || change->empty())
    effect_->showNothing(
        tr("Tick a planting, and what it does to the plan stands here."));
  else
    effect_->show(session_->effectOf(*change), session_->programmes().at(programme_));
}

void ProgrammePlantingsPanel::keep() {
  session_->performOrTell(deed());
  Q_EMIT left();
}

ProgrammeFaultsPanel::ProgrammeFaultsPanel(QWidget* parent)
    : Card(QPalette::Light, parent)
    , title_(wrapped(textLabel({}, TypeSize::head, true)))
    , list_(wrapped(textLabel({})))
    , close_(new QPushButton(tr("&Close"))) {
  setObjectName(QStringLiteral("programmeFaults"));
  list_->setObjectName(QStringLiteral("faultList"));
  list_->setTextInteractionFlags(Qt::TextSelectableByMouse);
  close_->setObjectName(QStringLiteral("closeFaults"));
  auto* lines = cardLines(this);
  lines->addWidget(title_);
  lines->addWidget(list_);
  lines->addWidget(close_, 0, Qt::AlignLeft);
  lines->addStretch();
  connect(close_, &QPushButton::clicked, this, &ProgrammeFaultsPanel::left);
}

void ProgrammeFaultsPanel::show(const QString& title, const Problems& problems) {
  constexpr std::size_t most = 12;
  title_->setText(title);
  QStringList lines;
  for (std::size_t i = 0; i < std::min(most, problems.size()); ++i)
    lines << topwire::say(problems[i]);
  if (problems.size() > most)
    lines << tr("and %1 more")
                 .arg(countText(static_cast<std::int64_t>(problems.size() - most)));
  list_->setText(lines.join(QLatin1Char('\n')));
  close_->setFocus(Qt::OtherFocusReason);
}

}  // namespace topwire
