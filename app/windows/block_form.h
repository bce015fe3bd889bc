#pragma once

#include "app/models/session.h"
#include "app/windows/form.h"

#include <QLineEdit>
#include <QPushButton>

namespace topwire {

/// Adds a block or edits one, in the page. Checks as one types by asking the same deed
/// that saving performs.
class BlockForm : public QWidget {
  Q_OBJECT

public:
  explicit BlockForm(Session& session, QWidget* parent = nullptr);

  void startNew();
  void startEdit(BlockId block);
  /// False once the block being edited is gone, by undo or otherwise.
  bool isAbout(const Orchard& orchard) const;

Q_SIGNALS:
  void saved(topwire::BlockId block, bool isNew);
  void left();

private:
  void addFields();
  void fill(const Block& block);
  void check();
  void save();
  /// The block as the fields have it, what could not be read, and what the deed says.
  Checked<Change> deed(Block& block) const;

  Session* session_;
  Block start_;
  bool isNew_ = true;
  QLabel* title_;
  Form* form_;
  QLineEdit* name_;
  QLineEdit* rows_;
  QLineEdit* rowSpacing_;
  QLineEdit* rowLength_;
  QLineEdit* elevation_;
  QLineEdit* minimumCorrection_;
  QLineEdit* maximumCorrection_;
  QLineEdit* workersAtMost_;
  QLineEdit* latitude_;
  QLineEdit* longitude_;
  QLineEdit* notes_;
  QPushButton* save_;
};

}  // namespace topwire
