#pragma once

#include "app/look/card.h"
#include "app/windows/stage_row.h"

#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include <optional>
#include <vector>

namespace topwire {

/// The season's stages of one planting beside the chart: click one, click "Seen today".
/// Below them what the last change moved, and how far the weather reaches.
class StagesPanel : public Card {
  Q_OBJECT

public:
  explicit StagesPanel(Session& session, QWidget* parent = nullptr);

  void setPlanting(const Planting& planting, const HeatScene& scene);
  /// What replanning moved; stands until something else does.
  void tellShift(const QString& words);
  /// Grows with its rows instead of scrolling, for a page that scrolls as a whole.
  void setScrolling(bool scrolls);
  void choose(int bbch);
  void takeFocus();

Q_SIGNALS:
  void calendarWanted();

protected:
  bool event(QEvent* event) override;

private:
  QWidget* head();
  QWidget* foot();
  void fill(const HeatScene& scene);
  void addRow(const StageLine& line);
  void see(int bbch, Day day);
  void step(const StageRow& from, int steps);
  StageRow* rowOf(int bbch) const;
  void showChosen();

  Session* session_;
  PlantingId planting_;
  std::optional<int> chosen_;
  std::vector<StageRow*> rows_;
  bool scrolls_ = true;
  QLabel* place_ = nullptr;
  QScrollArea* area_ = nullptr;
  QVBoxLayout* list_ = nullptr;
  QWidget* shift_ = nullptr;
  QLabel* shiftWords_ = nullptr;
  QLabel* coverage_ = nullptr;
};

}  // namespace topwire
