#pragma once

#include "app/models/session.h"
#include "app/windows/form.h"

#include <QLineEdit>
#include <QPushButton>

namespace topwire {

/// Adds a crew or edits one, in the page. Checks as one types by asking the same deed
/// that saving performs.
class CrewForm : public QWidget {
  Q_OBJECT

public:
  explicit CrewForm(Session& session, QWidget* parent = nullptr);

  void startNew();
  void startEdit(CrewId crew);
  /// False once the crew being edited is gone, by undo or otherwise.
  bool isAbout(const Orchard& orchard) const;

  CrewId crew() const { return start_.id; }

Q_SIGNALS:
  void saved();
  void left();

private:
  void addFields();
  void addButtons();
  void fill(const Crew& crew);
  /// What the programmes ask for, so that a skill is written as they write it.
  QString skillsHint() const;
  void check();
  void save();
  Checked<Change> deed() const;

  Session* session_;
  Crew start_;
  bool isNew_ = true;
  QLabel* title_;
  Form* form_;
  QLineEdit* name_;
  QLineEdit* workers_;
  QLineEdit* hours_;
  QLineEdit* youngHours_;
  QLineEdit* skills_;
  QLineEdit* members_;
  QLineEdit* daysOff_;
  QPushButton* save_;
};

}  // namespace topwire
