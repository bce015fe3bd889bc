#pragma once

#include "app/models/session.h"
#include "app/windows/form.h"

#include <QComboBox>
#include <QDateEdit>
#include <QLineEdit>
#include <QPushButton>

namespace topwire {

/// Adds a planting to a block or edits one, in the page; says the vigour class and the
/// count of trees as one types.
class PlantingForm : public QWidget {
  Q_OBJECT

public:
  explicit PlantingForm(Session& session, QWidget* parent = nullptr);

  void startNew(BlockId block);
  void startEdit(PlantingId planting);
  /// False once the block, or the planting being edited, is gone.
  bool isAbout(const Orchard& orchard) const;

Q_SIGNALS:
  void saved(topwire::PlantingId planting);
  void left();

private:
  void addFields();
  void fill(const Planting& planting);
  void fillChoices();
  void check();
  void save();
  void sayWhatFollows(const Planting& planting);
  Planting read(class FieldReader& fields) const;
  Checked<Change> deed(Planting& planting) const;

  Session* session_;
  Planting start_;
  bool isNew_ = true;
  QLabel* title_;
  Form* form_;
  QComboBox* cultivar_;
  QComboBox* rootstock_;
  QComboBox* kind_;
  QDateEdit* planted_;
  QLineEdit* rows_;
  QLineEdit* treeSpacing_;
  QLineEdit* treesPerRow_;
  QLineEdit* trees_;
  QComboBox* vigour_;
  QLineEdit* vigourReason_;
  QComboBox* programme_;
  QLineEdit* code_;
  QPushButton* save_;
};

}  // namespace topwire
