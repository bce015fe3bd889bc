#pragma once

#include "app/look/card.h"
#include "app/models/session.h"

#include <QPushButton>

#include <vector>

class QVBoxLayout;

namespace topwire {

class CrewForm;
class Questions;

/// The crews of the orchard, a line each, and the form to add or edit one.
class CrewsCard : public Card {
  Q_OBJECT

public:
  CrewsCard(Session& session, Questions& questions, QWidget* parent = nullptr);

private:
  /// What a line shows of a crew.
  struct Line {
    CrewId id;
    QString name;
    QString facts;

    friend bool operator==(const Line&, const Line&) = default;
  };

  std::vector<Line> linesNow() const;
  void fill();
  QWidget* makeLine(const Line& line, int nameWidth);
  void openNew();
  void openEdit(CrewId crew);
  void close();
  void bringFormIntoSight();
  void remove(CrewId crew);
  /// Where the keyboard goes on once the form is closed.
  void focusOn(CrewId crew);

  Session* session_;
  Questions* questions_;
  CrewForm* form_;
  QVBoxLayout* rows_;
  QLabel* none_;
  QPushButton* add_;
  std::vector<Line> shown_;
  bool writable_ = true;  ///< as the lines were last made for
};

}  // namespace topwire
