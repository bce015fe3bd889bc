#include "app/windows/crews_card.h"

#include "app/windows/crew_form.h"
#include "app/windows/field_reader.h"
#include "app/windows/questions.h"
#include "app/words/say.h"
#include "core/edit/crew_deeds.h"

#include <QHBoxLayout>
#include <QLocale>
#include <QScrollArea>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>

namespace topwire {

namespace {

QString editNameOf(CrewId crew) {
  return QStringLiteral("editCrew-") + QString::fromStdString(idText(crew));
}

/// Those still to come: "19 April, 5–17 July".
QString daysOffText(const Crew& crew, Day today) {
  QStringList spans;
  for (const DaySpan& span : crew.daysOff)
    if (span.last >= today) spans << voiceIn(language()).span(span);
  return spans.join(QLatin1String(", "));
}

}  // namespace

CrewsCard::CrewsCard(Session& session, Questions& questions, QWidget* parent)
    : Card(QPalette::Light, parent)
    , session_(&session)
    , questions_(&questions)
    , form_(new CrewForm{session})
    , rows_(new QVBoxLayout)
    , none_(mutedLabel(tr("No crew yet; work cannot be placed without one."),
                       TypeSize::body))
    , add_(new QPushButton(tr("&Add crew"))) {
  setObjectName(QStringLiteral("crewsCard"));
  none_->setObjectName(QStringLiteral("noCrews"));
  add_->setObjectName(QStringLiteral("addCrew"));
  rows_->setSpacing(4);
  auto* lines = new QVBoxLayout{this};
  lines->setContentsMargins(16, 12, 16, 16);
  lines->setSpacing(8);
  lines->addWidget(textLabel(tr("Crews"), TypeSize::name, true));
  lines->addWidget(none_);
  lines->addLayout(rows_);
  lines->addWidget(add_, 0, Qt::AlignLeft);
  lines->addWidget(form_);
  form_->hide();
  connect(add_, &QPushButton::clicked, this, &CrewsCard::openNew);
  connect(form_, &CrewForm::saved, this, &CrewsCard::close);
  connect(form_, &CrewForm::left, this, &CrewsCard::close);
  connect(session_, &Session::changed, this, &CrewsCard::fill);
  connect(session_, &Session::reset, form_, &QWidget::hide);
  fill();
}

std::vector<CrewsCard::Line> CrewsCard::linesNow() const {
  std::vector<Line> lines;
  for (const Crew* held : crewsInOrder(session_->orchard())) {
    const Crew& crew = *held;
    const QString workers =
        crew.workers == 1 ? tr("1 worker") : tr("%1 workers").arg(crew.workers);
    const QString skills = crew.skills.empty() ? tr("all-round") : namesText(crew.skills);
    const QString hours = QLocale{}.toString(crew.hoursPerDay, 'g', 4);
    const QString facts = tr("%1, %2 h a day · %3").arg(workers, hours, skills);
    const QString off = daysOffText(crew, session_->today());
    lines.push_back({crew.id,
                     QString::fromStdString(crew.name),
                     off.isEmpty() ? facts : tr("%1 · off %2").arg(facts, off)});
  }
  return lines;
}

void CrewsCard::fill() {
  if (!session_->isOpen()) return;
  const bool writable = !session_->isReadOnly();
  add_->setEnabled(writable);
  if (!form_->isHidden() && !form_->isAbout(session_->orchard())) form_->hide();
  std::vector<Line> lines = linesNow();
  none_->setVisible(lines.empty());
  if (lines == shown_ && writable == writable_) return;
  shown_ = std::move(lines);
  writable_ = writable;
  while (QLayoutItem* item = rows_->takeAt(0)) {
    item->widget()->hide();
    item->widget()->deleteLater();
    delete item;
  }
  const QFontMetrics bold{fontOf(TypeSize::body, true)};
  int widest = 0;
  for (const Line& line : shown_)
    widest = std::max(widest, bold.horizontalAdvance(line.name));
  for (const Line& line : shown_) rows_->addWidget(makeLine(line, widest));
}

QWidget* CrewsCard::makeLine(const Line& line, int nameWidth) {
  auto* row = new QWidget;
  row->setAutoFillBackground(false);
  auto* edit = new QPushButton{tr("Edit")};
  edit->setObjectName(editNameOf(line.id));
  edit->setAccessibleName(tr("Edit %1").arg(line.name));
  auto* remove = new QPushButton{tr("Delete")};
  remove->setObjectName(QStringLiteral("deleteCrew-")
                        + QString::fromStdString(idText(line.id)));
  remove->setAccessibleName(tr("Delete %1").arg(line.name));
  edit->setEnabled(writable_);
  remove->setEnabled(writable_);
  auto* across = new QHBoxLayout{row};
  across->setContentsMargins(0, 0, 0, 0);
  across->setSpacing(12);
  auto* name = textLabel(line.name, TypeSize::body, true);
  name->setMinimumWidth(nameWidth);
  across->addWidget(name);
  across->addWidget(wrapping(mutedLabel(line.facts, TypeSize::body)), 1);
  across->addWidget(edit);
  across->addWidget(remove);
  const CrewId crew = line.id;
  connect(edit, &QPushButton::clicked, this, [this, crew] { openEdit(crew); });
  connect(remove, &QPushButton::clicked, this, [this, crew] { this->remove(crew); });
  return row;
}

void CrewsCard::openNew() {
  form_->show();
  form_->startNew();
  bringFormIntoSight();
}

void CrewsCard::openEdit(CrewId crew) {
  form_->show();
  form_->startEdit(crew);
  bringFormIntoSight();
}

/// All of it where there is room, else its beginning. Only once it has its place.
void CrewsCard::bringFormIntoSight() {
  constexpr int below = 12;
  QTimer::singleShot(0, form_, [this] {
    QWidget* at = parentWidget();
    while (at != nullptr && qobject_cast<QScrollArea*>(at) == nullptr)
      at = at->parentWidget();
    auto* area = qobject_cast<QScrollArea*>(at);
    if (area == nullptr) return;
    area->ensureWidgetVisible(form_, 0, below);
    if (QWidget* first = form_->focusWidget()) area->ensureWidgetVisible(first);
  });
}

void CrewsCard::close() {
  form_->hide();
  focusOn(form_->crew());
}

void CrewsCard::focusOn(CrewId crew) {
  auto* edit = findChild<QPushButton*>(editNameOf(crew));
  (edit != nullptr ? edit : add_)->setFocus(Qt::OtherFocusReason);
}

void CrewsCard::remove(CrewId crew) {
  const auto line = std::ranges::find(shown_, crew, &Line::id);
  const QString name = line->name;
  const QString question = tr("Delete crew %1, with its turnouts, pins and planned jobs? "
                              "What it ticked stays.")
                               .arg(name);
  if (!questions_->confirm(this, question, tr("&Delete %1").arg(name))) return;
  session_->performOrTell(deleteCrew(session_->orchard(), crew));
  add_->setFocus(Qt::OtherFocusReason);
}

}  // namespace topwire
