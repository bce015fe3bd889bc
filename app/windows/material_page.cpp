#include "app/windows/material_page.h"

#include "app/look/card.h"
#include "app/look/icons.h"
#include "app/paper/sheet_painter.h"
#include "app/windows/block_words.h"
#include "app/windows/page_head.h"
#include "app/windows/print_window.h"
#include "core/material/material_table_text.h"

#include <QClipboard>
#include <QFileDialog>
#include <QGuiApplication>
#include <QHeaderView>
#include <QPrintDialog>
#include <QPrinter>
#include <QSignalBlocker>
#include <QStandardPaths>
#include <QVBoxLayout>

namespace topwire {

namespace {

constexpr int rowHeight = 36;
constexpr int headHeight = 32;

enum Column { item, needed, buy, work, columns };

QTableWidgetItem* cell(const QString& text, bool isFigure = false) {
  auto* made = new QTableWidgetItem{text};
  made->setFlags(Qt::ItemIsSelectable | Qt::ItemIsEnabled);
  made->setTextAlignment((isFigure ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
  return made;
}

/// Nothing planted yet: the work up to its first leaf lies ahead.
bool isNew(const Session& session, const Planting& planting) {
  return planting.kind != PlantingKind::replant && planting.planted > session.today();
}

}  // namespace

MaterialPage::MaterialPage(Session& session, QWidget* parent)
    : QWidget(parent)
    , session_(&session)
    , head_(new PageHead)
    , span_(new QComboBox)
    , plantings_(new QComboBox)
    , table_(new QTableWidget(0, columns))
    , empty_(textLabel({}, TypeSize::head))
    , notes_(mutedLabel({}, TypeSize::body)) {
  setObjectName(QStringLiteral("materialPage"));
  addChoices();
  addDeeds();
  table_->setObjectName(QStringLiteral("materials"));
  table_->setAccessibleName(tr("What to pick up"));
  table_->setHorizontalHeaderLabels({tr("Item"), tr("Needed"), tr("Buy"), tr("For")});
  table_->setSelectionBehavior(QAbstractItemView::SelectRows);
  table_->setSelectionMode(QAbstractItemView::SingleSelection);
  table_->setTabKeyNavigation(false);
  table_->setFrameShape(QFrame::NoFrame);
  table_->setShowGrid(false);
  table_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
  table_->verticalHeader()->hide();
  table_->verticalHeader()->setMinimumSectionSize(rowHeight);
  table_->verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  table_->horizontalHeader()->setHighlightSections(false);
  table_->horizontalHeader()->setMinimumHeight(headHeight);
  table_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  table_->horizontalHeader()->setSectionResizeMode(work, QHeaderView::Stretch);
  table_->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
  empty_->setObjectName(QStringLiteral("noMaterial"));
  empty_->setWordWrap(true);
  notes_->setWordWrap(true);
  notes_->setObjectName(QStringLiteral("materialNotes"));
  auto* card = new Card{QPalette::Base};
  auto* inside = new QVBoxLayout{card};
  inside->setContentsMargins(8, 8, 8, 8);
  inside->addWidget(table_);
  auto* lines = new QVBoxLayout{this};
  lines->setContentsMargins(measure::pageMargin, 12, measure::pageMargin, 20);
  lines->setSpacing(14);
  lines->addWidget(head_);
  lines->addWidget(empty_);
  lines->addWidget(card, 1);
  lines->addWidget(notes_);
  lines->addStretch();
  connect(session_, &Session::changed, this, &MaterialPage::refresh);
  connect(session_, &Session::reset, this, &MaterialPage::startAnew);
  startAnew();
}

void MaterialPage::addChoices() {
  span_->setObjectName(QStringLiteral("materialSpan"));
  span_->setAccessibleName(tr("For how long to pick up"));
  span_->addItem(tr("for a week"), static_cast<int>(Span::week));
  span_->addItem(tr("for a season"), static_cast<int>(Span::season));
  span_->addItem(tr("for a new planting"), static_cast<int>(Span::planting));
  plantings_->setObjectName(QStringLiteral("materialPlanting"));
  plantings_->setAccessibleName(tr("New planting"));
  plantings_->setSizeAdjustPolicy(QComboBox::AdjustToContents);
  head_->addChoice(span_);
  head_->addChoice(plantings_);
  earlier_ = head_->addButton(tr("Ea&rlier"), "earlierMaterial");
  earlier_->setIcon(iconFor(Icon::previous));
  later_ = head_->addButton(tr("La&ter"), "laterMaterial");
  later_->setIcon(iconFor(Icon::next));
  connect(span_, &QComboBox::currentIndexChanged, this, &MaterialPage::refresh);
  connect(plantings_, &QComboBox::currentIndexChanged, this, &MaterialPage::refresh);
  connect(earlier_, &QPushButton::clicked, this, [this] { step(-1); });
  connect(later_, &QPushButton::clicked, this, [this] { step(1); });
}

void MaterialPage::addDeeds() {
  auto* copied = head_->addButton(tr("C&opy as CSV"), "copyMaterial");
  auto* printed = head_->addButton(tr("&Print…"), "printMaterial");
  auto* saved = head_->addButton(tr("&Save as PDF…"), "saveMaterial");
  deeds_ = {copied, printed, saved};
  connect(copied, &QPushButton::clicked, this, &MaterialPage::copy);
  connect(printed, &QPushButton::clicked, this, &MaterialPage::print);
  connect(saved, &QPushButton::clicked, this, &MaterialPage::askForPdf);
}

void MaterialPage::startAnew() {
  if (session_->isOpen()) {
    week_ = isoWeekOf(session_->today());
    season_ = session_->season();
  }
  refresh();
}

void MaterialPage::showWeek(IsoWeek week) {
  week_ = week;
  span_->setCurrentIndex(span_->findData(static_cast<int>(Span::week)));
  refresh();
}

MaterialPage::Span MaterialPage::span() const {
  return static_cast<Span>(span_->currentData().toInt());
}

void MaterialPage::step(int by) {
  if (span() == Span::season)
    season_ = season_.plus(by);
  else
    week_ = by < 0 ? previousWeek(week_) : nextWeek(week_);
  refresh();
}

void MaterialPage::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  refresh();
}

/// A page out of sight plans nothing.
void MaterialPage::refresh() {
  if (!isVisible() || !session_->isOpen()) return;
  offerPlantings();
  plantings_->setVisible(span() == Span::planting && plantings_->count() > 0);
  earlier_->setVisible(span() != Span::planting);
  later_->setVisible(span() != Span::planting);
  list_ = listChosen();
  head_->say(tr("Material"), spanText());
  for (QPushButton* deed : deeds_) deed->setEnabled(!list_.empty());
  empty_->setText(span() == Span::planting && plantings_->count() == 0
                      ? tr("Nothing is to be planted. A planting whose day lies ahead "
                           "has its material here.")
                      : tr("Nothing is to be picked up."));
  empty_->setVisible(list_.empty());
  table_->parentWidget()->setVisible(!list_.empty());
  fillTable();
}

void MaterialPage::offerPlantings() {
  const QSignalBlocker quiet{plantings_};
  const QString before = plantings_->currentData().toString();
  plantings_->clear();
  const Orchard& orchard = session_->orchard();
  for (const Block* block : blocksInOrder(orchard))
    for (const Planting* planting : plantingsOf(orchard, block->id))
      if (isNew(*session_, *planting))
        plantings_->addItem(
            tr("%1: %2").arg(QString::fromStdString(block->name), stockText(*planting)),
            QString::fromStdString(planting->code));
  const int kept = plantings_->findData(before);
  if (kept >= 0) plantings_->setCurrentIndex(kept);
}

MaterialList MaterialPage::listChosen() {
  const Orchard& orchard = session_->orchard();
  const Trade trade = session_->trade();
  const Day today = session_->today();
  if (span() == Span::week)
    return materialOfWeek(orchard, trade, session_->planFor(daysOf(week_)), week_, today);
  if (span() == Span::season) {
    const Hemisphere hemisphere = orchard.settings.hemisphere();
    const DaySpan days{firstDayOf(season_, hemisphere), lastDayOf(season_, hemisphere)};
    return materialOfSeason(orchard, trade, session_->planFor(days), season_, today);
  }
  const Planting* planting =
      plantingByCode(orchard, plantings_->currentData().toString().toStdString());
  return planting == nullptr ? MaterialList{}
                             : materialOfPlanting(orchard, trade, *planting, today);
}

QString MaterialPage::spanText() const {
  const Hemisphere hemisphere = session_->orchard().settings.hemisphere();
  if (span() == Span::week)
    return say(Sentence{phrase("Material", "Week %1: %2"),
                        {std::int64_t{week_.number},
                         voiceIn(language()).spanWithYear(daysOf(week_)).toStdString()}});
  if (span() == Span::season)
    return say(Sentence{phrase("Material", "Season %1"), {nameOf(season_, hemisphere)}});
  return say(Sentence{phrase("Material", "%1, to the end of the first leaf"),
                      {plantings_->currentText().toStdString()}});
}

void MaterialPage::fillTable() {
  const Orchard& orchard = session_->orchard();
  const Voice voice = voiceIn(language());
  table_->setRowCount(static_cast<int>(list_.lines.size()));
  int row = 0;
  for (const MaterialLine& line : list_.lines) {
    const QString amount =
        amountText(line.needed, line.unit, orchard.settings.units, voice);
    table_->setItem(row, item, cell(capitalised(say(line.name))));
    table_->setItem(row, needed, cell(amount, true));
    table_->setItem(row, buy, cell(line.packs > 0 ? say(packsText(line)) : QString{}));
    table_->setItem(row, work, cell(workText(orchard, line, voice)));
    ++row;
  }
  if (row > 0 && table_->currentRow() < 0) table_->setCurrentCell(0, item);
  QStringList notes;
  for (const Sentence& note : list_.notes) notes << say(note);
  notes_->setText(notes.join(u' '));
  notes_->setVisible(!notes.isEmpty());
}

void MaterialPage::copy() {
  const Table table = tableOf(list_, session_->orchard(), language());
  QGuiApplication::clipboard()->setText(QString::fromStdString(toCsv(table)));
}

MaterialSheet MaterialPage::sheet() const {
  return {session_->orchard().settings.name, spanText(), list_, session_->today()};
}

std::vector<Page> MaterialPage::pages() const {
  return layOut(
      sheet(), session_->orchard(), PageFormat{usualPaper()}, voiceIn(language()));
}

QString MaterialPage::fileName() const {
  switch (span()) {
    case Span::week:
      return tr("material-%1.pdf").arg(QString::fromStdString(isoText(week_)));
    case Span::season:
      return tr("material-%1.pdf").arg(season_.year);
    case Span::planting:
      break;
  }
  return tr("material-%1.pdf").arg(plantings_->currentData().toString());
}

void MaterialPage::print() {
  QPrinter printer{QPrinter::HighResolution};
  printer.setDocName(fileName());
  QPrintDialog dialog{&printer, this};
  if (dialog.exec() != QDialog::Accepted) return;
  const Done done = printPages(printer, pages());
  if (!done) Q_EMIT session_->troubled(done.error());
}

void MaterialPage::askForPdf() {
  const QString folder =
      QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
  const QString path = QFileDialog::getSaveFileName(
      this, tr("Save as PDF"), folder + QLatin1Char('/') + fileName(), tr("PDF (*.pdf)"));
  if (path.isEmpty()) return;
  if (const Done done = savePdf(path); !done) Q_EMIT session_->troubled(done.error());
}

Done MaterialPage::savePdf(const QString& path) const {
  return writePdf(path, pages(), spanText());
}

}  // namespace topwire
