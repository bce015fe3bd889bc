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

class HeatCard;
struct HeatPage;
class PageHead;
class Questions;
class StagesPanel;

/// The season's heat and the stages it brings; beside the chart the stages to be noted,
/// or one of the ways in which weather and dates come in.
class WeatherPage : public QWidget {
  Q_OBJECT

public:
  WeatherPage(Session& session, Questions& questions, QWidget* parent = nullptr);

  /// What stands beside the chart.
  enum class Beside { stages, dailyFigures, file, pastSeasons };
  void showBeside(Beside beside);
  Beside beside() const;
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
  void keyPressEvent(QKeyEvent* event) override;

private:
  QWidget* content();
  QWidget* work();
  QWidget* emptyPage();
  void addWays();
  void startAnew();
  void refresh();
  void refreshPlantings();
  void showSeason();
  void tellShift(const std::vector<PlanDifference>& differences);
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
  std::map<Beside, QPushButton*> ways_;
  QWidget* work_ = nullptr;
  QWidget* empty_ = nullptr;
  QBoxLayout* body_ = nullptr;
  HeatCard* heat_ = nullptr;
  QStackedWidget* beside_ = nullptr;
  StagesPanel* stages_ = nullptr;
};

}  // namespace topwire
