#pragma once

#include "app/models/session.h"
#include "app/windows/block_list.h"

#include <QBoxLayout>
#include <QScrollArea>
#include <QStackedWidget>
#include <QWidget>

namespace topwire {

class BlockForm;
class MeasurementsPanel;
class PageHead;
class PlantingForm;
class PlantingsCard;
class Questions;
class RecordsCard;
class RowsCard;
class StagesCard;
class TargetsCard;

/// The blocks: the list, the chosen one's rows, plantings, targets, stages and records,
/// and the forms that add and edit, all in one page.
class BlocksPage : public QWidget {
  Q_OBJECT

public:
  BlocksPage(Session& session, Questions& questions, QWidget* parent = nullptr);

  void chooseBlock(BlockId block);
  /// Its block, with the place to type measurements open.
  void measure(PlantingId planting);

public Q_SLOTS:
  void addBlock();

Q_SIGNALS:
  void dayWanted(topwire::Day day);
  void closingWanted();

protected:
  void resizeEvent(QResizeEvent* event) override;

private:
  QWidget* makeSide();
  QScrollArea* makeDetail();
  QWidget* makeEmpty();
  void listenToForms();
  void refresh();
  void showChosen();
  void editBlock();
  void deleteBlock();
  void addPlanting(BlockId block);
  void deletePlanting(PlantingId planting);
  void backToDetail();
  void showMeasurements(bool open);
  const Block* chosen() const;

  Session* session_;
  Questions* questions_;
  PageHead* head_;
  BlockList* list_;
  QWidget* side_;
  QStackedWidget* stack_;
  QWidget* empty_;
  QScrollArea* detail_;
  BlockForm* blockForm_;
  PlantingForm* plantingForm_;
  QBoxLayout* pair_;
  RowsCard* rows_;
  PlantingsCard* plantings_;
  TargetsCard* targets_;
  MeasurementsPanel* measurements_;
  StagesCard* stages_;
  RecordsCard* records_;
  std::vector<QWidget*> headButtons_;
};

}  // namespace topwire
