#pragma once

#include "app/models/closing_draft.h"

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QTimer>
#include <QWidget>

namespace topwire {

class DoneCard;
class LabourBars;
class MeasuresCard;
class NextLeafCard;
class PageHead;
class ReplantsCard;

/// Looks back on a season step by step, settles the next one, and closes it in one
/// change.
class ClosingPage : public QWidget {
  Q_OBJECT

public:
  explicit ClosingPage(Session& session, QWidget* parent = nullptr);

Q_SIGNALS:
  void blocksWanted();
  /// Measurements of this planting are to be typed.
  void measureWanted(topwire::PlantingId planting);

protected:
  void showEvent(QShowEvent* event) override;

private:
  QWidget* makeSteps();
  QWidget* makeLabour();
  QWidget* makeDeed();
  void startAnew();
  void refresh();
  void choose(const SeasonTarget& target);
  void choose(const ProposedReplant& replant);
  void sayWhatFollows();
  void showLabour();
  void closeIt();

  Session* session_;
  ClosingDraft draft_;
  Season season_{};
  PageHead* head_;
  QScrollArea* area_;
  QWidget* steps_;
  DoneCard* done_;
  MeasuresCard* measures_;
  NextLeafCard* nextLeaf_;
  ReplantsCard* replants_;
  LabourBars* labour_;
  QLabel* effects_;
  QLabel* problem_;
  QLineEdit* by_;
  QPushButton* close_;
  QTimer labourLater_;
};

}  // namespace topwire
