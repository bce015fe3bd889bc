#include "app/windows/print_window.h"

#include "app/look/card.h"
#include "app/look/icons.h"
#include "app/look/look.h"
#include "app/look/tokens.h"
#include "app/paper/sheet_painter.h"
#include "app/words/say.h"

#include <QFileDialog>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLocale>
#include <QPainter>
#include <QPrintDialog>
#include <QPrinter>
#include <QScrollBar>
#include <QStandardPaths>
#include <QVBoxLayout>

#include <algorithm>

namespace topwire {

namespace {

constexpr int choicesWidth = 264;
constexpr double pageGap = 16;
constexpr int widestPage = 900;

QLabel* labelFor(const QString& words, QWidget* field) {
  QLabel* label = mutedLabel(words, TypeSize::body);
  label->setBuddy(field);
  return label;
}

}  // namespace

Paper usualPaper() {
  switch (QLocale{}.territory()) {
    case QLocale::UnitedStates:
    case QLocale::Canada:
    case QLocale::Mexico:
    case QLocale::Chile:
    case QLocale::Colombia:
      return Paper::letter;
    default:
      return Paper::a4;
  }
}

PagePreview::PagePreview(QWidget* parent) : QWidget(parent) {
  QSizePolicy policy{QSizePolicy::Preferred, QSizePolicy::Preferred};
  policy.setHeightForWidth(true);
  setSizePolicy(policy);
  setAccessibleName(tr("Preview"));
}

void PagePreview::setPages(std::vector<Page> pages) {
  pages_ = std::move(pages);
  setMinimumHeight(heightForWidth(width()));
  updateGeometry();
  update();
}

double PagePreview::scaleFor(int width) const {
  if (pages_.empty()) return 1;
  const double room = std::min(width, widestPage) - 2 * pageGap;
  return std::max(0.2, room / pages_.front().size.width());
}

int PagePreview::heightForWidth(int width) const {
  double height = pageGap;
  for (const Page& page : pages_)
    height += page.size.height() * scaleFor(width) + pageGap;
  return static_cast<int>(height);
}

QSize PagePreview::sizeHint() const {
  return {680, heightForWidth(680)};
}

void PagePreview::paintEvent(QPaintEvent*) {
  QPainter painter{this};
  painter.setRenderHint(QPainter::Antialiasing);
  const double scale = scaleFor(width());
  double top = pageGap;
  for (const Page& page : pages_) {
    const QSizeF size = page.size * scale;
    const QRectF box{QPointF{(width() - size.width()) / 2, top}, size};
    painter.fillRect(box, Qt::white);
    painter.save();
    painter.setClipRect(box);
    painter.translate(box.topLeft());
    paintPage(painter, page, scale);
    painter.restore();
    painter.setPen(baseColours(currentTheme()).outline);
    painter.drawRect(box.adjusted(-0.5, -0.5, 0.5, 0.5));
    top += size.height() + pageGap;
  }
}

PrintWindow::PrintWindow(Session& session, IsoWeek week, QWidget* parent)
    : QDialog(parent), session_(&session), week_(week) {
  setWindowTitle(tr("Print the week"));
  auto* layout = new QHBoxLayout{this};
  layout->setContentsMargins(16, 16, 16, 16);
  layout->setSpacing(16);
  layout->addWidget(choices());
  preview_ = new PagePreview;
  area_ = new QScrollArea;
  area_->setWidget(preview_);
  area_->setWidgetResizable(true);
  area_->setAccessibleName(tr("Preview"));
  layout->addWidget(area_, 1);
  resize(1000, 760);
  layOutPages();
  print_->setFocus();
}

QWidget* PrintWindow::choices() {
  auto* side = new QWidget;
  side->setFixedWidth(choicesWidth);
  auto* column = new QVBoxLayout{side};
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(6);
  column->addWidget(weekChooser());
  column->addSpacing(10);
  paper_ = new QComboBox;
  paper_->setObjectName(QStringLiteral("paper"));
  paper_->addItem(tr("A4"), static_cast<int>(Paper::a4));
  paper_->addItem(tr("Letter"), static_cast<int>(Paper::letter));
  paper_->setCurrentIndex(paper_->findData(static_cast<int>(usualPaper())));
  language_ = new QComboBox;
  language_->setObjectName(QStringLiteral("sheetLanguage"));
  language_->addItem(QStringLiteral("English"), static_cast<int>(Language::english));
  language_->addItem(QStringLiteral("Español"), static_cast<int>(Language::spanish));
  language_->setCurrentIndex(language_->findData(static_cast<int>(language())));
  column->addWidget(labelFor(tr("Pap&er"), paper_));
  column->addWidget(paper_);
  column->addWidget(labelFor(tr("&Language of the sheet"), language_));
  column->addWidget(language_);
  connect(paper_, &QComboBox::currentIndexChanged, this, &PrintWindow::layOutPages);
  connect(language_, &QComboBox::currentIndexChanged, this, &PrintWindow::layOutPages);
  summary_ = mutedLabel({}, TypeSize::body);
  summary_->setWordWrap(true);
  problem_ = textLabel({}, TypeSize::body, true);
  problem_->setWordWrap(true);
  problem_->setObjectName(QStringLiteral("printProblem"));
  column->addSpacing(10);
  column->addWidget(summary_);
  column->addWidget(problem_);
  column->addStretch(1);
  column->addWidget(deeds());
  return side;
}

QWidget* PrintWindow::weekChooser() {
  auto* group = new QWidget;
  auto* column = new QVBoxLayout{group};
  column->setContentsMargins(0, 0, 0, 0);
  weekLabel_ = textLabel({}, TypeSize::head, true);
  weekLabel_->setWordWrap(true);
  weekLabel_->setObjectName(QStringLiteral("weekLabel"));
  column->addWidget(weekLabel_);
  auto* line = new QHBoxLayout;
  auto* earlier = new QPushButton{tr("Ea&rlier")};
  earlier->setObjectName(QStringLiteral("earlierWeek"));
  earlier->setIcon(iconFor(Icon::previous));
  auto* later = new QPushButton{tr("La&ter")};
  later->setObjectName(QStringLiteral("laterWeek"));
  later->setIcon(iconFor(Icon::next));
  line->addWidget(earlier, 1);
  line->addWidget(later, 1);
  column->addLayout(line);
  connect(earlier, &QPushButton::clicked, this, [this] { setWeek(previousWeek(week_)); });
  connect(later, &QPushButton::clicked, this, [this] { setWeek(nextWeek(week_)); });
  return group;
}

QWidget* PrintWindow::deeds() {
  auto* group = new QWidget;
  auto* column = new QVBoxLayout{group};
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(8);
  print_ = new QPushButton;
  print_->setObjectName(QStringLiteral("printDeed"));
  print_->setProperty("main", true);
  print_->setDefault(true);
  auto* pdf = new QPushButton{tr("&Save as PDF…")};
  pdf->setObjectName(QStringLiteral("savePdf"));
  auto* close = new QPushButton{tr("&Close")};
  for (QPushButton* button : {print_, pdf, close}) column->addWidget(button);
  connect(print_, &QPushButton::clicked, this, &PrintWindow::print);
  connect(pdf, &QPushButton::clicked, this, &PrintWindow::askForPdf);
  connect(close, &QPushButton::clicked, this, &PrintWindow::reject);
  return group;
}

void PrintWindow::setWeek(IsoWeek week) {
  week_ = week;
  layOutPages();
  area_->verticalScrollBar()->setValue(0);
}

void PrintWindow::layOutPages() {
  const DaySpan days = daysOf(week_);
  const WorkSheet sheet = workSheet(session_->orchard(),
                                    session_->trade(),
                                    session_->planFor(days),
                                    week_,
                                    session_->today());
  const PageFormat format{static_cast<Paper>(paper_->currentData().toInt())};
  const auto spoken = static_cast<Language>(language_->currentData().toInt());
  pages_ = layOut(sheet, format, spoken);
  preview_->setPages(pages_);
  problem_->clear();
  weekLabel_->setText(say(Sentence{phrase("PrintWindow", "Week %1: %2 to %3"),
                                   {std::int64_t{week_.number},
                                    shortDayText(days.first).toStdString(),
                                    shortDayText(days.last).toStdString()}}));
  std::int64_t jobs = 0;
  for (const SheetBlock& block : sheet.blocks)
    jobs += static_cast<std::int64_t>(block.jobs.size());
  summary_->setText(
      say(Sentence{counted(jobs,
                           phrase("PrintWindow", "%1 job, %2 left to do."),
                           phrase("PrintWindow", "%1 jobs, %2 left to do.")),
                   {jobs, hoursText(sheet.hoursLeft).toStdString()}}));
  const auto pages = static_cast<std::int64_t>(pages_.size());
  print_->setText(say(Sentence{counted(pages,
                                       phrase("PrintWindow", "&Print %1 page…"),
                                       phrase("PrintWindow", "&Print %1 pages…")),
                               {pages}}));
}

void PrintWindow::print() {
  QPrinter printer{QPrinter::HighResolution};
  printer.setDocName(suggestedName());
  QPrintDialog dialog{&printer, this};
  if (dialog.exec() != QDialog::Accepted) return;
  tell(printPages(printer, pages_));
}

QString PrintWindow::suggestedName() const {
  return QString::fromStdString(isoText(week_) + ".pdf");
}

void PrintWindow::askForPdf() {
  const QString folder =
      QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
  const QString path =
      QFileDialog::getSaveFileName(this,
                                   tr("Save as PDF"),
                                   folder + QLatin1Char('/') + suggestedName(),
                                   tr("PDF (*.pdf)"));
  if (!path.isEmpty()) tell(savePdf(path));
}

Done PrintWindow::savePdf(const QString& path) {
  return writePdf(path, pages_, weekLabel_->text());
}

void PrintWindow::tell(const Done& done) {
  if (done) return accept();
  problem_->setText(say(done.error()));
}

void PrintWindow::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_PageDown || event->key() == Qt::Key_PageUp) {
    area_->verticalScrollBar()->triggerAction(event->key() == Qt::Key_PageDown
                                                  ? QAbstractSlider::SliderPageStepAdd
                                                  : QAbstractSlider::SliderPageStepSub);
    return;
  }
  QDialog::keyPressEvent(event);
}

}  // namespace topwire
