#pragma once

#include "app/models/session.h"
#include "app/windows/block_list.h"

#include <QBoxLayout>
#include <QStackedWidget>
#include <QWidget>

namespace topwire {

class BlockForm;
class PageHead;
class PlantingForm;
class PlantingsCard;
class Questions;
class RecordsCard;
class RowsCard;
class StagesCard;

/// The blocks: the list, the chosen one's rows, plantings, stages and records, and the
/// forms that add and edit, all in one page.
class BlocksPage : public QWidget {
  Q_OBJECT

public:
  BlocksPage(Session& session, Questions& questions, QWidget* parent = nullptr);

  void chooseBlock(BlockId block);

public Q_SLOTS:
  void addBlock();

Q_SIGNALS:
  void dayWanted(topwire::Day day);
  void closingWanted();

protected:
  void resizeEvent(QResizeEvent* event) override;

private:
  QWidget* makeSide();
  QWidget* makeDetail();
  QWidget* makeEmpty();
  void listenToForms();
  void refresh();
  void showChosen();
  void editBlock();
  void deleteBlock();
  void addPlanting(BlockId block);
  void deletePlanting(PlantingId planting);
  void backToDetail();
  const Block* chosen() const;

  Session* session_;
  Questions* questions_;
  PageHead* head_;
  BlockList* list_;
  QWidget* side_;
  QStackedWidget* stack_;
  QWidget* empty_;
  QWidget* detail_;
  BlockForm* blockForm_;
  PlantingForm* plantingForm_;
  QBoxLayout* pair_;
  RowsCard* rows_;
  PlantingsCard* plantings_;
  StagesCard* stages_;
  RecordsCard* records_;
  std::vector<QWidget*> headButtons_;
};

}  // namespace topwire
