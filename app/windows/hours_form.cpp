#include "app/windows/hours_form.h"

#include "app/windows/field_reader.h"
#include "app/windows/figure_field.h"
#include "app/windows/task_words.h"
#include "app/windows/today_words.h"
#include "app/words/say.h"

#include <algorithm>

namespace topwire {

namespace {

constexpr int minutesPerHour = 60;
constexpr int hoursWidth = 88;
constexpr int rowsWidth = 150;
constexpr int linesShown = 4;
constexpr int lineHeight = 44;

/// Of a planned job's rows, those with any tick on its day.
RowSet tickedRows(const Orchard& orchard, const PlannedJob& job) {
  RowSet rows;
  for (const Tick* tick : standingTicks(orchard))
    if (tick->task == job.task && tick->day == job.of.day)
      rows = rows.with(tick->rows.inCommonWith(job.rows));
  return rows;
}

}  // namespace

HoursForm::HoursForm(Session& session, QWidget* parent)
    : DayForm(session, "hoursForm", parent), area_(new QScrollArea) {
  area_->setWidgetResizable(true);
  area_->setFrameShape(QFrame::NoFrame);
  area_->setFocusPolicy(Qt::NoFocus);
  area_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  area_->viewport()->setBackgroundRole(QPalette::Base);
  addWide(area_);
  addNote(tr("Worker-hours, all workers together; the plan learns its pace from them."));
  deed_ = addDeed(tr("E&nter rows and hours"), "hoursDeed", true);
  connect(deed_, &QPushButton::clicked, this, &HoursForm::act);
}

void HoursForm::open(Day day) {
  day_ = day;
  clearProblem();
  setTitle(tr("Done on %1").arg(weekdayText(day)));
  jobs_.clear();
  const Orchard& orchard = session().orchard();
  for (const PlanAndDone& job : planAndDone(orchard, day))
    jobs_.push_back({job, tickedRows(orchard, job.planned)});
  area_->setWidget(makeLines());
  const int lines = std::min(linesShown, static_cast<int>(jobs_.size()));
  area_->setFixedHeight(std::max(1, lines) * lineHeight);
  deed_->setEnabled(!jobs_.empty());
  focusFirst();
}

/// Where hours are missing; else where rows are.
void HoursForm::focusFirst() {
  if (jobs_.empty()) return;
  const auto missing =
      std::ranges::find_if(jobs_, [](const Line& line) { return line.job.hoursMissing; });
  QLineEdit* first = missing != jobs_.end() ? missing->hours : jobs_.front().rows;
  first->setFocus(Qt::OtherFocusReason);
}

QWidget* HoursForm::makeLines() {
  auto* box = new QWidget;
  auto* grid = new QGridLayout{box};
  box->setAutoFillBackground(false);
  grid->setContentsMargins(4, 4, 4, 4);
  grid->setHorizontalSpacing(12);
  grid->setColumnStretch(0, 3);
  grid->setColumnStretch(1, 2);
  for (std::size_t i = 0; i < jobs_.size(); ++i)
    addLine(*grid, static_cast<int>(i), jobs_[i]);
  return box;
}

void HoursForm::addLine(QGridLayout& grid, int row, Line& line) {
  const PlannedJob& planned = line.job.planned;
  const QString name = nameOfTask(session(), planned.task);
  const QString crew = crewName(session().orchard(), planned.of.crew);
  const QString rows = topwire::rowsText(planned.rows, {});
  line.rows = makeField("jobRows",
                        tr("Rows done of %1").arg(name),
                        QString::fromStdString(topwire::rowsText(line.ticked)));
  line.rows->setFixedWidth(rowsWidth);
  line.rows->setPlaceholderText(QString::fromStdString(topwire::rowsText(planned.rows)));
  line.hours =
      makeField("jobHours",
                tr("Hours for %1").arg(name),
                line.job.minutes > 0
                    ? figureText(static_cast<double>(line.job.minutes) / minutesPerHour)
                    : QString{});
  line.hours->setFixedWidth(hoursWidth);
  grid.addWidget(wrapping(textLabel(name, TypeSize::body, true)), row, 0);
  grid.addWidget(
      wrapping(mutedLabel(tr("%1, %2").arg(crew, rows), TypeSize::body)), row, 1);
  grid.addWidget(mutedLabel(tr("Rows"), TypeSize::body), row, 2);
  grid.addWidget(line.rows, row, 3);
  grid.addWidget(mutedLabel(tr("Hours"), TypeSize::body), row, 4);
  grid.addWidget(line.hours, row, 5);
}

QLineEdit* HoursForm::makeField(const char* name,
                                const QString& spoken,
                                const QString& text) {
  auto* field = new QLineEdit{text};
  field->setObjectName(QLatin1String(name));
  field->setMinimumHeight(measure::buttonHeight);
  field->setAccessibleName(spoken);
  connect(field, &QLineEdit::returnPressed, this, &HoursForm::act);
  return field;
}

std::optional<Problem> HoursForm::read(const Line& line, std::vector<NotedHours>& into) {
  const QString rowsText = line.rows->text().trimmed();
  const QString hoursText = line.hours->text().trimmed();
  if (rowsText.isEmpty() && hoursText.isEmpty()) return std::nullopt;
  const ParsedRows rows = parseRows(rowsText.toStdString());
  if (rows.fault) return Problem{rowFaultSentence(*rows.fault), {}, {}};
  const auto minutes = hoursText.isEmpty() ? 0 : readHours(hoursText);
  if (!minutes) return Problem{noHoursSentence(hoursText), {}, {}};
  if (rows.rows == line.ticked && *minutes == line.job.minutes) return std::nullopt;
  const auto view = findView(session(), line.job.planned.task);
  if (!view) return std::nullopt;
  const QString crew = crewName(session().orchard(), line.job.planned.of.crew);
  into.push_back({*view->task,
                  session().titleOf(*view->task),
                  rows.rows,
                  *minutes,
                  crew.toStdString()});
  return std::nullopt;
}

Checked<std::vector<NotedHours>> HoursForm::noted() {
  std::vector<NotedHours> noted;
  Problems problems;
  for (const Line& line : jobs_)
    if (auto problem = read(line, noted)) problems.push_back(std::move(*problem));
  if (!problems.empty()) return tl::unexpected{problems};
  return noted;
}

void HoursForm::act() {
  const auto entries = noted();
  if (!entries) return settle(entries.error());
  if (entries->empty()) return Q_EMIT closed();
  settle(
      session().perform(noteHours(session().orchard(), *entries, day_, session().ids())));
}

}  // namespace topwire
