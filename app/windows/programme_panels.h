#pragma once

#include "app/look/card.h"
#include "app/models/session.h"
#include "app/windows/form.h"

#include <QListWidget>
#include <QPushButton>

namespace topwire {

class EffectPanel;
class WordsField;

/// Names a copy of a programme and makes it.
class ProgrammeCopyPanel : public Card {
  Q_OBJECT

public:
  explicit ProgrammeCopyPanel(Session& session, QWidget* parent = nullptr);

  void start(const Programme& original, const std::string& text);

Q_SIGNALS:
  void made(const std::string& id);
  void left();

private:
  Checked<Change> deed() const;
  void make();

  Session* session_;
  std::string text_;
  std::string id_;
  QLabel* title_;
  Form* form_;
  WordsField* name_;
};

/// Chooses which plantings go by a programme, and says what that does to the plan.
class ProgrammePlantingsPanel : public Card {
  Q_OBJECT

public:
  explicit ProgrammePlantingsPanel(Session& session, QWidget* parent = nullptr);

  void start(const std::string& programme);

  bool isAbout(const std::string& programme) const { return programme_ == programme; }

Q_SIGNALS:
  void left();

private:
  Checked<Change> deed() const;
  void tell();
  void keep();

  Session* session_;
  std::string programme_;
  QLabel* title_;
  QListWidget* list_;
  EffectPanel* effect_;
};

/// What stands in the way of bringing a file in, by line.
class ProgrammeFaultsPanel : public Card {
  Q_OBJECT

public:
  explicit ProgrammeFaultsPanel(QWidget* parent = nullptr);

  void show(const QString& title, const Problems& problems);

Q_SIGNALS:
  void left();

private:
  QLabel* title_;
  QLabel* list_;
  QPushButton* close_;
};

}  // namespace topwire
