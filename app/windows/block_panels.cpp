#include "app/windows/block_panels.h"

#include "app/windows/block_words.h"
#include "app/words/say.h"

#include <QGridLayout>
#include <QHBoxLayout>

#include <algorithm>

namespace topwire {

namespace {

constexpr int cardMargin = 16;

QVBoxLayout* cardLines(Card& card) {
  auto* lines = new QVBoxLayout{&card};
  lines->setContentsMargins(cardMargin, 12, cardMargin, 14);
  lines->setSpacing(6);
  return lines;
}

QString dotted(const QStringList& parts) {
  QStringList said = parts;
  said.removeAll(QString{});
  return said.join(QStringLiteral(" · "));
}

QLabel* wrappingLine(const QString& text) {
  QLabel* label = mutedLabel(text);
  label->setWordWrap(true);
  return label;
}

struct Record {
  Day day{};
  QString what;
  QString who;
};

QString operationName(const Session& session, const TaskKey& key) {
  const Operation* operation = operationOf(session.orchard(), session.programmes(), key);
  if (operation != nullptr) return say(operation->name);
  const auto mark = session.orchard().marks.find(key);
  const bool byHand = mark != session.orchard().marks.end();
  return QString::fromStdString(byHand ? mark->second.handTitle : key.operation);
}

bool stands(const Session& session, PlantingId planting, BlockId block) {
  const auto found = session.orchard().plantings.find(planting);
  return found != session.orchard().plantings.end() && found->second.block == block;
}

std::vector<Record> recordsOf(const Session& session, BlockId block) {
  std::vector<Record> records;
  for (const Tick* tick : standingTicks(session.orchard())) {
    if (tick->takesBack || !stands(session, tick->task.planting, block)) continue;
    const QString hours = tick->minutes > 0 ? hoursText(tick->minutes / 60.0) : QString{};
    QString rows = QString::fromStdString(rowsText(tick->rows));
    if (tick->percent < 100)
      rows = RecordsCard::tr("%1 (%2 %)").arg(rows).arg(tick->percent);
    records.push_back(
        {tick->day,
         RecordsCard::tr("%1, rows %2").arg(operationName(session, tick->task), rows),
         dotted({QString::fromStdString(tick->by), hours})});
  }
  for (const auto& [id, seen] : session.orchard().observations) {
    const Stage* stage = stageByCode(seen.bbch);
    if (stage == nullptr || !stands(session, seen.planting, block)) continue;
    records.push_back({seen.day,
                       capitalised(RecordsCard::tr("%1 seen").arg(say(stage->name))),
                       QString::fromStdString(seen.by)});
  }
  std::ranges::stable_sort(records, std::greater{}, &Record::day);
  return records;
}

}  // namespace

void emptyOut(QLayout& layout) {
  while (QLayoutItem* item = layout.takeAt(0)) {
    if (QWidget* widget = item->widget()) {
      widget->hide();
      widget->deleteLater();
    }
    delete item;
  }
}

PlantingsCard::PlantingsCard(Session& session, QWidget* parent)
    : Card(QPalette::Light, parent)
    , session_(&session)
    , lines_(new QVBoxLayout)
    , add_(new QPushButton(tr("Add a &planting"))) {
  add_->setObjectName(QStringLiteral("addPlanting"));
  auto* head = new QHBoxLayout;
  head->addWidget(textLabel(tr("Plantings"), TypeSize::name, true), 1);
  head->addWidget(add_);
  auto* all = cardLines(*this);
  all->addLayout(head);
  all->addLayout(lines_);
  lines_->setSpacing(8);
  connect(add_, &QPushButton::clicked, this, &PlantingsCard::addWanted);
}

void PlantingsCard::setBlock(BlockId block) {
  emptyOut(*lines_);
  add_->setEnabled(!session_->isReadOnly());
  const Block& shown = session_->orchard().blocks.at(block);
  const auto plantings = plantingsOf(session_->orchard(), block);
  if (plantings.empty())
    lines_->addWidget(
        mutedLabel(tr("Nothing planted yet. A planting is one cultivar on one rootstock, "
                      "set on one day."),
                   TypeSize::body));
  for (const Planting* planting : plantings) {
    if (planting != plantings.front()) lines_->addWidget(hairline());
    lines_->addWidget(line(*planting, shown));
  }
}

QWidget* PlantingsCard::line(const Planting& planting, const Block& block) {
  const UnitSystem units = session_->orchard().settings.units;
  const QString kind = planting.kind == PlantingKind::main
                           ? QString{}
                           : QStringLiteral(" · ") + nameOf(planting.kind);
  auto* box = new QWidget;
  auto* grid = new QGridLayout{box};
  grid->setContentsMargins(0, 0, 0, 0);
  grid->setHorizontalSpacing(8);
  grid->setVerticalSpacing(1);
  grid->setColumnStretch(0, 1);
  grid->addWidget(textLabel(stockText(planting) + kind, TypeSize::body, true), 0, 0);
  grid->addWidget(
      wrappingLine(
          dotted({plantedText(*session_, planting),
                  ageText(*session_, planting),
                  tr("rows %1").arg(QString::fromStdString(rowsText(planting.rows)))})),
      1,
      0);
  grid->addWidget(wrappingLine(vigourText(*session_, planting)), 2, 0);
  const int trees = treesIn(session_->orchard(), planting);
  if (trees > 0)
    grid->addWidget(textLabel(tr("%1 trees").arg(countText(trees)), TypeSize::head, true),
                    0,
                    1,
                    Qt::AlignRight);
  grid->addWidget(mutedLabel(densityText(units, block.rowSpacing, planting.treeSpacing)),
                  1,
                  1,
                  Qt::AlignRight);
  grid->addWidget(
      mutedLabel(tr("%1 by %2")
                     .arg(QString::fromStdString(lengthText(planting.treeSpacing, units)),
                          QString::fromStdString(lengthText(block.rowSpacing, units)))),
      2,
      1,
      Qt::AlignRight);
  auto* edit = new QPushButton{tr("Edit")};
  auto* remove = new QPushButton{tr("Delete")};
  const QString code = QString::fromStdString(planting.code);
  edit->setObjectName(QStringLiteral("editPlanting-") + code);
  remove->setObjectName(QStringLiteral("deletePlanting-") + code);
  edit->setAccessibleName(tr("Edit %1").arg(stockText(planting)));
  remove->setAccessibleName(tr("Delete %1").arg(stockText(planting)));
  for (QPushButton* button : {edit, remove}) button->setEnabled(!session_->isReadOnly());
  grid->addWidget(edit, 0, 2, 3, 1, Qt::AlignVCenter);
  grid->addWidget(remove, 0, 3, 3, 1, Qt::AlignVCenter);
  connect(edit, &QPushButton::clicked, this, [this, id = planting.id] {
    Q_EMIT editWanted(id);
  });
  connect(remove, &QPushButton::clicked, this, [this, id = planting.id] {
    Q_EMIT deleteWanted(id);
  });
  return box;
}

RecordsCard::RecordsCard(Session& session, QWidget* parent)
    : Card(QPalette::Light, parent), session_(&session), lines_(new QVBoxLayout) {
  setObjectName(QStringLiteral("recordsCard"));
  auto* all = cardLines(*this);
  all->addWidget(textLabel(tr("What happened"), TypeSize::name, true));
  all->addLayout(lines_);
  all->addStretch();
}

void RecordsCard::setBlock(BlockId block) {
  emptyOut(*lines_);
  const std::vector<Record> records = recordsOf(*session_, block);
  if (records.empty())
    lines_->addWidget(mutedLabel(tr("Nothing ticked or seen yet."), TypeSize::body));
  constexpr std::size_t most = 8;
  for (std::size_t i = 0; i < std::min(most, records.size()); ++i) {
    const Record& record = records[i];
    auto* box = new QWidget;
    auto* grid = new QGridLayout{box};
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setVerticalSpacing(0);
    grid->setColumnMinimumWidth(0, 84);
    grid->setColumnStretch(1, 1);
    grid->addWidget(mutedLabel(shortDayText(record.day)), 0, 0, Qt::AlignTop);
    QLabel* what = textLabel(record.what);
    what->setWordWrap(true);
    grid->addWidget(what, 0, 1);
    if (!record.who.isEmpty()) grid->addWidget(mutedLabel(record.who), 1, 1);
    lines_->addWidget(box);
  }
}

}  // namespace topwire
