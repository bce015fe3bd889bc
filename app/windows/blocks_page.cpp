#include "app/windows/blocks_page.h"

#include "app/look/card.h"
#include "app/look/icons.h"
#include "app/windows/block_form.h"
#include "app/windows/block_panels.h"
#include "app/windows/block_words.h"
#include "app/windows/measurements_panel.h"
#include "app/windows/page_head.h"
#include "app/windows/planting_form.h"
#include "app/windows/questions.h"
#include "app/windows/targets_card.h"

#include <QHBoxLayout>
#include <QVBoxLayout>

namespace topwire {

namespace {

constexpr int listWidth = 232;
constexpr int blockFormIndex = 2;
constexpr int plantingFormIndex = 3;

QScrollArea* scrolled(QWidget* inner) {
  auto* area = new QScrollArea;
  area->setFrameShape(QFrame::NoFrame);
  area->setWidgetResizable(true);
  area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  area->setFocusPolicy(Qt::NoFocus);
  inner->setAutoFillBackground(false);
  area->setWidget(inner);
  area->viewport()->setAutoFillBackground(false);
  return area;
}

QScrollArea* onCard(QWidget* form) {
  auto* card = new Card{QPalette::Light};
  auto* lines = new QVBoxLayout{card};
  lines->setContentsMargins(0, 0, 0, 0);
  lines->addWidget(form);
  return scrolled(card);
}

}  // namespace

BlocksPage::BlocksPage(Session& session, Questions& questions, QWidget* parent)
    : QWidget(parent)
    , session_(&session)
    , questions_(&questions)
    , head_(new PageHead)
    , list_(new BlockList)
    , stack_(new QStackedWidget)
    , blockForm_(new BlockForm(session))
    , plantingForm_(new PlantingForm(session))
    , pair_(new QBoxLayout(QBoxLayout::LeftToRight))
    , rows_(new RowsCard(session))
    , plantings_(new PlantingsCard(session))
    , targets_(new TargetsCard(session))
    , measurements_(new MeasurementsPanel(session))
    , stages_(new StagesCard(session))
    , records_(new RecordsCard(session)) {
  setObjectName(QStringLiteral("blocksPage"));
  auto* edit = head_->addButton(tr("&Edit block"), "editBlock");
  auto* remove = head_->addButton(tr("&Delete block"), "deleteBlock");
  auto* close = head_->addButton(tr("&Close the season"), "closeTheSeason");
  headButtons_ = {edit, remove};
  stack_->addWidget(empty_ = makeEmpty());
  stack_->addWidget(detail_ = makeDetail());
  stack_->addWidget(onCard(blockForm_));
  stack_->addWidget(onCard(plantingForm_));

  auto* columns = new QHBoxLayout;
  columns->setSpacing(16);
  columns->addWidget(side_ = makeSide());
  columns->addWidget(stack_, 1);
  auto* lines = new QVBoxLayout{this};
  lines->setContentsMargins(measure::pageMargin, 12, measure::pageMargin, 20);
  lines->setSpacing(14);
  lines->addWidget(head_);
  lines->addLayout(columns, 1);

  connect(edit, &QPushButton::clicked, this, &BlocksPage::editBlock);
  connect(remove, &QPushButton::clicked, this, &BlocksPage::deleteBlock);
  connect(close, &QPushButton::clicked, this, &BlocksPage::closingWanted);
  connect(list_, &BlockList::chosenChanged, this, &BlocksPage::backToDetail);
  connect(rows_, &RowsCard::dayWanted, this, &BlocksPage::dayWanted);
  connect(session_, &Session::changed, this, &BlocksPage::refresh);
  connect(session_, &Session::reset, this, &BlocksPage::backToDetail);
  listenToForms();
  showMeasurements(false);
  refresh();
}

QWidget* BlocksPage::makeSide() {
  auto* card = new Card{QPalette::Base};
  card->setFixedWidth(listWidth);
  auto* add = new QPushButton{iconFor(Icon::plus), tr("&Add a block")};
  add->setObjectName(QStringLiteral("addBlock"));
  auto* lines = new QVBoxLayout{card};
  lines->setContentsMargins(1, 8, 1, 16);
  lines->addWidget(list_, 1);
  auto* foot = new QHBoxLayout;
  foot->setContentsMargins(16, 0, 16, 0);
  foot->addWidget(add);
  lines->addLayout(foot);
  connect(add, &QPushButton::clicked, this, &BlocksPage::addBlock);
  headButtons_.push_back(add);
  return card;
}

QScrollArea* BlocksPage::makeDetail() {
  auto* inner = new QWidget;
  pair_->setSpacing(16);
  pair_->addWidget(stages_, 1);
  pair_->addWidget(records_, 1);
  auto* lines = new QVBoxLayout{inner};
  lines->setContentsMargins(0, 0, 0, 0);
  lines->setSpacing(16);
  lines->addWidget(rows_);
  lines->addWidget(plantings_);
  lines->addWidget(targets_);
  lines->addWidget(measurements_);
  lines->addLayout(pair_);
  lines->addStretch();
  return scrolled(inner);
}

QWidget* BlocksPage::makeEmpty() {
  auto* page = new QWidget;
  auto* add = new QPushButton{tr("&Add a block")};
  add->setObjectName(QStringLiteral("addFirstBlock"));
  add->setProperty("main", true);
  auto* lines = new QVBoxLayout{page};
  lines->setContentsMargins(0, 60, 0, 0);
  lines->setSpacing(12);
  lines->addWidget(textLabel(tr("No blocks yet."), TypeSize::title, true));
  lines->addWidget(textLabel(tr("A block is a piece of ground with rows.")));
  lines->addWidget(add, 0, Qt::AlignLeft);
  lines->addStretch();
  connect(add, &QPushButton::clicked, this, &BlocksPage::addBlock);
  headButtons_.push_back(add);
  return page;
}

void BlocksPage::listenToForms() {
  connect(blockForm_, &BlockForm::left, this, &BlocksPage::backToDetail);
  connect(plantingForm_, &PlantingForm::left, this, &BlocksPage::backToDetail);
  connect(blockForm_, &BlockForm::saved, this, [this](BlockId block, bool isNew) {
    list_->choose(block);
    backToDetail();
    if (isNew) addPlanting(block);
  });
  connect(plantingForm_, &PlantingForm::saved, this, &BlocksPage::backToDetail);
  connect(plantings_, &PlantingsCard::addWanted, this, [this] {
    if (const Block* block = chosen()) addPlanting(block->id);
  });
  connect(plantings_, &PlantingsCard::editWanted, this, [this](PlantingId planting) {
    stack_->setCurrentIndex(plantingFormIndex);
    plantingForm_->startEdit(planting);
  });
  connect(plantings_, &PlantingsCard::deleteWanted, this, &BlocksPage::deletePlanting);
  connect(targets_, &TargetsCard::measureWanted, this, &BlocksPage::showMeasurements);
  connect(targets_, &TargetsCard::chosenChanged, this, [this] {
    measurements_->setPlanting(targets_->chosen());
  });
  connect(measurements_, &MeasurementsPanel::closed, this, [this] {
    showMeasurements(false);
  });
}

/// Where there is no room for two cards side by side, the second goes under the first.
void BlocksPage::resizeEvent(QResizeEvent* event) {
  constexpr int roomForTwo = 760;
  pair_->setDirection(width() - listWidth < roomForTwo ? QBoxLayout::TopToBottom
                                                       : QBoxLayout::LeftToRight);
  QWidget::resizeEvent(event);
}

const Block* BlocksPage::chosen() const {
  const auto id = list_->chosen();
  if (!id || !session_->isOpen()) return nullptr;
  const auto found = session_->orchard().blocks.find(*id);
  return found == session_->orchard().blocks.end() ? nullptr : &found->second;
}

void BlocksPage::chooseBlock(BlockId block) {
  list_->choose(block);
}

void BlocksPage::refresh() {
  if (!session_->isOpen()) return showChosen();
  const int form = stack_->currentIndex();
  const bool stranded =
      (form == blockFormIndex && !blockForm_->isAbout(session_->orchard()))
      || (form == plantingFormIndex && !plantingForm_->isAbout(session_->orchard()));
  if (stranded) stack_->setCurrentWidget(detail_);
  list_->setRows(blockRows(*session_));
  showChosen();
}

void BlocksPage::showChosen() {
  const Block* block = chosen();
  const bool editing = stack_->currentIndex() >= blockFormIndex;
  const bool writable = session_->isOpen() && !session_->isReadOnly();
  for (QWidget* button : headButtons_) button->setEnabled(writable);
  headButtons_[0]->setVisible(block != nullptr && !editing);
  headButtons_[1]->setVisible(block != nullptr && !editing);
  side_->setVisible(block != nullptr);
  if (block == nullptr) {
    head_->say(tr("Blocks"), {});
    if (!editing) stack_->setCurrentWidget(empty_);
    return;
  }
  if (stack_->currentWidget() == empty_) stack_->setCurrentWidget(detail_);
  head_->say(QString::fromStdString(block->name), blockSubtitle(*session_, *block));
  rows_->setBlock(block->id);
  plantings_->setBlock(block->id);
  targets_->setBlock(block->id);
  measurements_->setPlanting(targets_->chosen());
  stages_->setBlock(block->id);
  records_->setBlock(block->id);
}

void BlocksPage::measure(PlantingId planting) {
  chooseBlock(session_->orchard().plantings.at(planting).block);
  backToDetail();
  measurements_->setPlanting(planting);
  showMeasurements(true);
}

void BlocksPage::backToDetail() {
  stack_->setCurrentWidget(chosen() != nullptr ? detail_ : empty_);
  showChosen();
}

/// Into sight first: a field that takes the keyboard out of sight gets no ring.
void BlocksPage::showMeasurements(bool open) {
  targets_->setMeasuring(open);
  measurements_->setVisible(open);
  if (!open) return;
  const auto go = [this] {
    detail_->ensureWidgetVisible(measurements_, 0, 20);
    measurements_->takeFocus();
  };
  QMetaObject::invokeMethod(this, go, Qt::QueuedConnection);
}

void BlocksPage::addBlock() {
  stack_->setCurrentIndex(blockFormIndex);
  showChosen();
  blockForm_->startNew();
}

void BlocksPage::editBlock() {
  const Block* block = chosen();
  if (block == nullptr) return;
  stack_->setCurrentIndex(blockFormIndex);
  showChosen();
  blockForm_->startEdit(block->id);
}

void BlocksPage::deleteBlock() {
  const Block* block = chosen();
  if (block == nullptr) return;
  const QString name = QString::fromStdString(block->name);
  const QString question =
      tr("Delete %1 with its plantings and what was seen in them? Undo brings it back.")
          .arg(name);
  if (!questions_->confirm(this, question, tr("&Delete %1").arg(name))) return;
  session_->performOrTell(topwire::deleteBlock(session_->orchard(), block->id));
}

void BlocksPage::addPlanting(BlockId block) {
  stack_->setCurrentIndex(plantingFormIndex);
  showChosen();
  plantingForm_->startNew(block);
}

void BlocksPage::deletePlanting(PlantingId planting) {
  const QString name = stockText(session_->orchard().plantings.at(planting));
  const QString question = tr("Delete %1? Undo brings it back.").arg(name);
  if (!questions_->confirm(this, question, tr("&Delete %1").arg(name))) return;
  session_->performOrTell(topwire::deletePlanting(session_->orchard(), planting));
}

}  // namespace topwire
