#pragma once

#include "app/models/season_chart.h"
#include "app/models/session.h"

#include <QBoxLayout>
#include <QComboBox>
#include <QPushButton>
#include <QScrollArea>
#include <QStackedWidget>
#include <QWidget>

#include <map>
#include <optional>
#include <vector>

namespace topwire {

class DailyFiguresPanel;
class DaysAheadCard;
class HeatCard;
struct HeatPage;
class BesidePanel;
class PageHead;
class PastSeasonsPanel;
class Questions;
class StagesPanel;
class WeatherFilePanel;

/// The season's heat and the stages it brings. Beside the chart stand the stages to be
/// noted, or a way for weather to come in; past seasons' dates take its place.
class WeatherPage : public QWidget {
  Q_OBJECT

public:
  WeatherPage(Session& session, Questions& questions, QWidget* parent = nullptr);

  enum class Part { stages, dailyFigures, file, pastSeasons };
  void showPart(Part part);

  Part part() const { return part_; }

  void choosePlanting(PlantingId planting);
  /// The chart as a page of its own.
  Done savePdf(const QString& path) const;

Q_SIGNALS:
  /// There is no block yet, and the person wants to add one.
  void blocksWanted();
  void calendarWanted();

protected:
  void resizeEvent(QResizeEvent* event) override;
  void showEvent(QShowEvent* event) override;

private:
  QWidget* content();
  QWidget* work();
  QWidget* emptyPage();
  void addWays();
  void addWay(Part part, const QString& words, const char* name);
  void addPanel(Part part, BesidePanel* panel);
  void startAnew();
  void refresh();
  void refreshPlantings();
  void showSeason();
  void showParts();
  void goToPart();
  void tellShift(const std::vector<PlanDifference>& differences,
                 const std::vector<Sentence>& why);
  void arrange();
  void print();
  void askForPdf();
  HeatPage pageOf() const;
  void tell(const Done& done);
  const Planting* chosen() const;

  Session* session_;
  Questions* questions_;
  /// Something changed while the page was out of sight.
  bool stale_ = true;
  std::vector<PlantingId> ids_;
  PageHead* head_ = nullptr;
  QComboBox* plantings_ = nullptr;
  Part part_ = Part::stages;
  std::map<Part, QPushButton*> ways_;
  std::map<Part, BesidePanel*> panels_;
  QScrollArea* area_ = nullptr;
  QWidget* work_ = nullptr;
  QWidget* empty_ = nullptr;
  QBoxLayout* body_ = nullptr;
  HeatCard* heat_ = nullptr;
  DaysAheadCard* ahead_ = nullptr;
  QStackedWidget* beside_ = nullptr;
  StagesPanel* stages_ = nullptr;
  DailyFiguresPanel* figures_ = nullptr;
  WeatherFilePanel* file_ = nullptr;
  PastSeasonsPanel* past_ = nullptr;
};

}  // namespace topwire
