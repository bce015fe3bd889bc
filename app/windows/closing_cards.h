#pragma once

#include "app/look/card.h"
#include "app/models/closing_draft.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDateEdit>
#include <QGridLayout>
#include <QLineEdit>
#include <QSpinBox>
#include <QVBoxLayout>

#include <set>

namespace topwire {

/// "Creek 1: Gala".
QString plantingName(const Orchard& orchard, PlantingId planting);

/// A step of closing a season: its number and name, one line on it, and what it holds.
class StepCard : public Card {
  Q_OBJECT

public:
  StepCard(int number, const QString& name, const QString& about);

  QVBoxLayout& lines() { return *lines_; }

private:
  QVBoxLayout* lines_;
};

/// What was done, missed and set aside, by planting.
class DoneCard : public StepCard {
  Q_OBJECT

public:
  explicit DoneCard(Session& session);
  void show(const SeasonReview& review);

private:
  void fill();
  void addPlanting(const PlantingReview& review);
  QWidget* plantingHead(const PlantingReview& review, QWidget* work);
  QWidget* workLine(const ReviewedWork& work) const;

  Session* session_;
  SeasonReview review_;
  std::set<PlantingId> open_;  ///< those whose work is unfolded
  QCheckBox* all_;
  QVBoxLayout* plantings_;
};

/// What is still to be measured, and the place to type it.
class MeasuresCard : public StepCard {
  Q_OBJECT

public:
  explicit MeasuresCard(Session& session);
  void show(const SeasonReview& review);

Q_SIGNALS:
  void measureWanted(topwire::PlantingId planting);

private:
  Session* session_;
  QVBoxLayout* plantings_;
};

/// Class and fruit for the next leaf, each with its reasons, changed in place.
class NextLeafCard : public StepCard {
  Q_OBJECT

public:
  explicit NextLeafCard(Session& session);
  void show(const ClosingDraft& draft);
  /// Those of a planting, under its line.
  void tell(const Problems& problems);

Q_SIGNALS:
  void chosen(const topwire::SeasonTarget& target);

private:
  struct Line {
    SeasonTarget target;
    std::string code;
    Vigour held;
    QComboBox* vigour;
    QLineEdit* from;
    QLineEdit* to;
    QLabel* problem;
  };

  void addLine(const SeasonTarget& target, const NextLeaf& leaf);
  void take(std::size_t index);

  Session* session_;
  QGridLayout* grid_;
  std::vector<Line> shown_;
  std::vector<NextLeaf> leaves_;
};

/// Trees to set where some are missing.
class ReplantsCard : public StepCard {
  Q_OBJECT

public:
  explicit ReplantsCard(Session& session);
  void show(const ClosingDraft& draft);
  void tell(const Problems& problems);

Q_SIGNALS:
  void chosen(const topwire::ProposedReplant& replant);

private:
  struct Line {
    ProposedReplant replant;
    std::string code;
    QSpinBox* trees;
    QLineEdit* rows;
    QDateEdit* planted;
    QLabel* problem;
  };

  void addLine(const ProposedReplant& replant);
  void take(std::size_t index);

  Session* session_;
  QGridLayout* grid_;
  std::vector<Line> shown_;
};

}  // namespace topwire
