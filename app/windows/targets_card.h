#pragma once

#include "app/look/card.h"
#include "app/models/session.h"
#include "core/targets/planting_targets.h"

#include <QComboBox>
#include <QGridLayout>
#include <QPushButton>
#include <QVBoxLayout>

#include <vector>

namespace topwire {

class MeasureView;

/// What is aimed at in one of a block's plantings this season, in figures, with the class
/// its growth speaks for and what was measured so far. The class is the grower's to keep
/// or to change.
class TargetsCard : public Card {
  Q_OBJECT

public:
  explicit TargetsCard(Session& session, QWidget* parent = nullptr);

  void setBlock(BlockId block);
  std::optional<PlantingId> chosen() const;
  void setMeasuring(bool open);

Q_SIGNALS:
  void chosenChanged();
  void measureWanted(bool open);

protected:
  void resizeEvent(QResizeEvent* event) override;
  void showEvent(QShowEvent* event) override;

private:
  QLayout* head();
  void refresh();
  void showFigures(const Planting& planting, const PlantingTargets& aim);
  void showClass(const PlantingTargets& aim);
  void showReasons(const Planting& planting, const PlantingTargets& aim);
  void addFigure(const QString& name, const QString& figure, const QString& about);
  void arrangeFigures();
  void settleClass(Vigour vigour);
  QString classReason() const;
  const Planting* planting() const;

  Session* session_;
  /// Something changed while the card was out of sight.
  bool stale_ = true;
  BlockId block_;
  std::vector<PlantingId> ids_;
  QComboBox* plantings_;
  QPushButton* measure_;
  QPushButton* why_;
  QLabel* nothing_;
  QWidget* body_;
  QGridLayout* figures_;
  std::vector<QWidget*> cells_;
  QLabel* class_;
  QPushButton* keep_;
  QPushButton* change_;
  ClassSuggestion suggestion_;
  QWidget* reasons_;
  QVBoxLayout* reasonLines_;
  MeasureView* chart_;
};

}  // namespace topwire
