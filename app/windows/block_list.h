#pragma once

#include "app/models/session.h"

#include <QAbstractListModel>
#include <QListView>

#include <optional>
#include <vector>

namespace topwire {

/// One line of the list of blocks.
struct BlockRow {
  BlockId id;
  QString name;
  QString line;  ///< cultivar and leaf
  TaskState state = TaskState::waiting;
  bool hasTasks = false;

  friend bool operator==(const BlockRow&, const BlockRow&) = default;
};

/// The blocks in order; each with the state of its most urgent task.
std::vector<BlockRow> blockRows(const Session& session);

/// Shows rows made elsewhere. Where the same blocks stand in the same order only what
/// differs is told, so that selection and scrolling stay.
class BlockRowsModel : public QAbstractListModel {
  Q_OBJECT

public:
  using QAbstractListModel::QAbstractListModel;

  void setRows(std::vector<BlockRow> rows);
  int rowCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role) const override;

  const BlockRow& at(int row) const { return rows_[static_cast<std::size_t>(row)]; }

  QModelIndex indexOf(BlockId block) const;

private:
  std::vector<BlockRow> rows_;
};

class BlockList : public QListView {
  Q_OBJECT

public:
  explicit BlockList(QWidget* parent = nullptr);

  void setRows(std::vector<BlockRow> rows);
  std::optional<BlockId> chosen() const;
  void choose(BlockId block);

Q_SIGNALS:
  void chosenChanged();

protected:
  void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;

private:
  BlockRowsModel* model_;
};

}  // namespace topwire
