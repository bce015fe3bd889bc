#pragma once

#include "app/look/card.h"
#include "app/models/session.h"

#include <QBoxLayout>
#include <QComboBox>
#include <QGridLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>

#include <optional>

namespace topwire {

/// A small form at the foot of the Today page: a title, fields, what is wrong with them,
/// a deed and the way back.
class DayForm : public Card {
  Q_OBJECT

public:
  DayForm(Session& session, const char* name, QWidget* parent = nullptr);

Q_SIGNALS:
  void closed();

protected:
  /// A field under its label, the next to the right.
  void addField(const QString& label, QWidget* field, int stretch = 0);
  QPushButton* addDeed(const QString& words, const char* name, bool main);
  void addWide(QWidget* part);
  void setTitle(const QString& title);
  void say(const QString& problem);
  void addNote(const QString& note);
  /// Closes, or says the first problem.
  void settle(const Problems& problems);
  void clearProblem();

  Session& session() { return *session_; }

  void keyPressEvent(QKeyEvent* event) override;

private:
  Session* session_;
  QLabel* title_;
  QGridLayout* fields_;
  QVBoxLayout* lines_;
  QHBoxLayout* deeds_;
  QLabel* problem_;
  QPushButton* close_;
};

/// Keeps everybody out of a block until a day and an hour.
class CloseBlockForm : public DayForm {
  Q_OBJECT

public:
  explicit CloseBlockForm(Session& session, QWidget* parent = nullptr);

  void open(Day day);

private:
  void act();

  void offerDays();
  /// Minutes from midnight; nothing where no hour stands there.
  std::optional<int> hour() const;

  Day day_{};
  QComboBox* block_;
  QComboBox* until_;  ///< nothing is chosen for the grower, who reads it off a label
  QLineEdit* hour_;
  QLineEdit* reason_;
};

/// How much of a day's usual hours can be worked.
class LostDayForm : public DayForm {
  Q_OBJECT

public:
  explicit LostDayForm(Session& session, QWidget* parent = nullptr);

  void open(Day day);

private:
  void act();
  void makeUsual();

  Day day_{};
  QSpinBox* percent_;
  QLineEdit* reason_;
  QPushButton* usual_;
};

}  // namespace topwire
