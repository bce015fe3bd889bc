#pragma once

#include "app/look/card.h"
#include "app/models/session.h"

#include <QPushButton>

namespace topwire {

/// What a change would do to the plan, before a person says yes or no to it.
class EffectPanel : public Card {
  Q_OBJECT

public:
  /// `keep` is what the main button says.
  EffectPanel(Session& session, const QString& keep, QWidget* parent = nullptr);

  void showNothing(const QString& words);
  /// What has to be mended first; it can still be left as it was.
  void showFault(const QString& words);
  /// `after` names work that only the changed programme has.
  void show(const PlanEffect& effect, const Programme& after);

Q_SIGNALS:
  void kept();
  void left();

private:
  QStringList linesOf(const PlanEffect& effect, const Programme& after) const;

  Session* session_;
  QLabel* summary_;
  QLabel* list_;
  QPushButton* keep_;
  QPushButton* leave_;
};

}  // namespace topwire
