#pragma once

#include "app/look/card.h"
#include "app/models/session.h"
#include "core/labour/learned_paces.h"

#include <QPushButton>

namespace topwire {

class PlainTable;

/// How long a tree takes: the programme's figures, and what the crews' own ticks made of
/// them.
class PacesCard : public Card {
  Q_OBJECT

public:
  explicit PacesCard(Session& session, QWidget* parent = nullptr);

  void refresh();

private:
  void fill();
  QString workOf(const LearnedPace& pace) const;

  Session* session_;
  std::vector<LearnedPace> paces_;
  QLabel* sum_;
  PlainTable* table_;
  QPushButton* all_;
};

}  // namespace topwire
