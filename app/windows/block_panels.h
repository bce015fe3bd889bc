#pragma once

#include "app/look/card.h"
#include "app/models/session.h"
#include "app/windows/row_picture.h"

#include <QComboBox>
#include <QDateEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include <optional>

namespace topwire {

/// The cards a block's page is made of. Each shows one block of the session's orchard and
/// is told by the page when to look again.

/// The rows, filled by a task's progress.
class RowsCard : public Card {
  Q_OBJECT

public:
  explicit RowsCard(Session& session, QWidget* parent = nullptr);
  void setBlock(BlockId block);

Q_SIGNALS:
  /// Where the task's days stand on the calendar.
  void dayWanted(topwire::Day day);

private:
  void fillTasks();
  void showTask();
  const TaskView* task() const;

  Session* session_;
  BlockId block_;
  std::vector<TaskKey> keys_;
  QComboBox* tasks_;
  QWidget* shape_;
  QLabel* state_;
  QLabel* left_;
  QPushButton* toCalendar_;
  RowPicture* picture_;
  RowLegend* legend_;
};

/// What stands in the block, planting by planting.
class PlantingsCard : public Card {
  Q_OBJECT

public:
  explicit PlantingsCard(Session& session, QWidget* parent = nullptr);
  void setBlock(BlockId block);

Q_SIGNALS:
  void addWanted();
  void editWanted(topwire::PlantingId planting);
  void deleteWanted(topwire::PlantingId planting);

private:
  QWidget* line(const Planting& planting, const Block& block);

  Session* session_;
  QVBoxLayout* lines_;
  QPushButton* add_;
};

/// This season's stages of one planting, and the place to say that one was seen.
class StagesCard : public Card {
  Q_OBJECT

public:
  explicit StagesCard(Session& session, QWidget* parent = nullptr);
  void setBlock(BlockId block);

private:
  void showStages();
  void offerStages(const Outlook& outlook);
  void see();
  const Planting* planting() const;

  Session* session_;
  BlockId block_;
  std::vector<PlantingId> ids_;
  QComboBox* plantings_;
  QVBoxLayout* lines_;
  QWidget* entry_;
  QComboBox* stage_;
  QDateEdit* day_;
  QLabel* problem_;
};

/// Ticks and seen stages, newest first.
class RecordsCard : public Card {
  Q_OBJECT

public:
  explicit RecordsCard(Session& session, QWidget* parent = nullptr);
  void setBlock(BlockId block);

private:
  Session* session_;
  QVBoxLayout* lines_;
};

/// Takes every widget out of a layout and does away with it.
void emptyOut(QLayout& layout);

}  // namespace topwire
