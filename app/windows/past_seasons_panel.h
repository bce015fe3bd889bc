#pragma once

#include "app/models/past_seasons.h"
#include "app/models/session.h"
#include "app/windows/beside_panel.h"

#include <QComboBox>
#include <QDateEdit>
#include <QTableView>

namespace topwire {

class Form;

/// When each cultivar reached its stages in earlier seasons: what was seen here, and
/// dates from the grower's own book, which are added and taken away below the table.
class PastSeasonsPanel : public BesidePanel {
  Q_OBJECT

public:
  explicit PastSeasonsPanel(Session& session, QWidget* parent = nullptr);

  void refresh();
  void takeFocus() override;

private:
  QWidget* table();
  QWidget* entry();
  void fillChoices();
  void takeCell(const QModelIndex& index);
  PastStage typed() const;
  void add();
  void remove();

  Session* session_;
  PastSeasonsModel* model_;
  QTableView* dates_ = nullptr;
  QLabel* empty_ = nullptr;
  Form* form_ = nullptr;
  QComboBox* cultivar_ = nullptr;
  QComboBox* stage_ = nullptr;
  QDateEdit* day_ = nullptr;
  QPushButton* add_ = nullptr;
  QPushButton* remove_ = nullptr;
};

}  // namespace topwire
