#include "app/windows/operation_view.h"

#include "app/look/tokens.h"
#include "app/paper/contact_sheet.h"
#include "app/windows/block_panels.h"
#include "app/windows/block_words.h"
#include "app/windows/programme_words.h"
#include "app/words/say.h"
#include "core/orchard/skill_words.h"

#include <QHBoxLayout>
#include <QPainter>
#include <QVBoxLayout>

namespace topwire {

namespace {

QLabel* wrapped(QLabel* label) {
  label->setWordWrap(true);
  label->setMinimumWidth(1);
  return label;
}

}  // namespace

OperationDrawing::OperationDrawing(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("operationDrawing"));
  setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
}

void OperationDrawing::setDrawing(const std::string& name, int leaf) {
  drawing_ = drawingFor(name, leaf);
  setVisible(drawing_.has_value());
  update();
}

void OperationDrawing::paintEvent(QPaintEvent*) {
  if (!drawing_) return;
  QPainter painter{this};
  painter.setRenderHint(QPainter::Antialiasing);
  const BaseColours& base = baseColours(currentTheme());
  paint(painter, *drawing_, rect(), base.text, base.raised);
}

OperationView::OperationView(Session& session, QWidget* parent)
    : Card(QPalette::Light, parent)
    , session_(&session)
    , name_(wrapped(textLabel({}, TypeSize::head, true)))
    , reach_(wrapped(mutedLabel({}, TypeSize::body)))
    , how_(wrapped(textLabel({})))
    , doneWhen_(wrapped(textLabel({}, TypeSize::body, true)))
    , drawing_(new OperationDrawing)
    , facts_(new QGridLayout) {
  setObjectName(QStringLiteral("operationView"));
  name_->setObjectName(QStringLiteral("operationName"));
  how_->setObjectName(QStringLiteral("operationHow"));
  facts_->setHorizontalSpacing(16);
  facts_->setVerticalSpacing(6);
  facts_->setColumnMinimumWidth(0, 120);
  facts_->setColumnStretch(1, 1);
  auto* lines = new QVBoxLayout{this};
  lines->setContentsMargins(16, 14, 16, 16);
  lines->setSpacing(12);
  lines->addWidget(makeHead());
  lines->addWidget(hairline());
  lines->addLayout(facts_);
  lines->addStretch(1);
}

QWidget* OperationView::makeHead() {
  auto* head = new QWidget;
  auto* words = new QVBoxLayout;
  words->setSpacing(6);
  for (QLabel* label : {name_, reach_, how_, doneWhen_}) words->addWidget(label);
  words->addStretch();
  auto* line = new QHBoxLayout{head};
  line->setContentsMargins(0, 0, 0, 0);
  line->setSpacing(16);
  line->addLayout(words, 1);
  line->addWidget(drawing_, 0, Qt::AlignTop);
  return head;
}

void OperationView::show(const Operation& operation, const Programme& programme) {
  name_->setText(say(operation.name));
  const QString reach = reachText(operation);
  reach_->setText(capitalised(reach.isEmpty() ? leavesText(operation)
                                              : leavesText(operation)
                                                    + QStringLiteral(", ") + reach));
  QStringList how;
  for (const Words& line : operation.how) how << say(line);
  how_->setText(how.join(QLatin1Char('\n')));
  doneWhen_->setText(tr("Done when: %1").arg(say(operation.doneWhen)));
  drawing_->setDrawing(operation.drawing, firstLeafOf(operation));
  emptyOut(*facts_);
  addFacts(operation, programme);
}

void OperationView::addFacts(const Operation& operation, const Programme& programme) {
  const Hemisphere hemisphere = session_->orchard().settings.hemisphere();
  const UnitSystem units = session_->orchard().settings.units;
  addFact(tr("Window"), windowText(operation, programme, hemisphere));
  if (operation.cutOff)
    addFact(tr("No use after"),
            tr("%1: %2").arg(anchorText(operation.cutOff->anchor, programme, hemisphere),
                             say(operation.cutOff->reason)));
  addFact(tr("Again"), capitalised(repeatText(operation, units)));
  addFact(tr("Needs first"), needsText(operation, programme));
  QStringList conditions;
  for (const Condition& condition : operation.when)
    conditions << conditionText(condition, units);
  addFact(tr("Only where"), capitalised(conditions.join(tr(" and "))));
  addFact(tr("Not when"), capitalised(avoidText(operation)));
  addFact(tr("Skill"), capitalised(say(skillInWords(operation.skill))));
  if (operation.cuts)
    addFact(tr("Wounds"), tr("It cuts living wood, so it waits for fit weather"));
  addFact(tr("Cost of delay"), capitalised(delayText(operation)));
  addFact(tr("Labour"), capitalised(secondsText(operation)));
  QStringList tools;
  for (const Words& tool : operation.tools) tools << say(tool);
  addFact(tr("Tools"), capitalised(joinedWords(tools)));
  addFact(tr("Material"), capitalised(materialsText(operation)));
  addFact(tr("Caution"), say(operation.caution));
  addFact(tr("Source"), QString::fromStdString(operation.source));
}

void OperationView::addFact(const QString& name, const QString& text) {
  if (text.isEmpty()) return;
  const int row = facts_->rowCount();
  facts_->addWidget(mutedLabel(name, TypeSize::body), row, 0, Qt::AlignTop);
  facts_->addWidget(wrapped(textLabel(text)), row, 1);
}

}  // namespace topwire
