#pragma once

#include "app/look/card.h"
#include "app/windows/job_card.h"

#include <QBoxLayout>
#include <QMenu>
#include <QPushButton>

namespace topwire {

/// What can be done with the chosen job besides ticking it, and why it stands there.
class JobBar : public Card {
  Q_OBJECT

public:
  explicit JobBar(Session& session, QWidget* parent = nullptr);

  struct Job {
    JobPlace place;
    bool pinned = false;
    QString reasons;
    QString nextDay;     ///< when it could be done instead; empty where there is none
    bool waits = false;  ///< it stands on no lane of the day
  };

  void setJob(const Job& job);
  void unfoldReasons(bool open);

  void focusWhy() { why_->setFocus(Qt::OtherFocusReason); }

  bool hasReasonsOpen() const { return !reasons_->isHidden(); }

Q_SIGNALS:
  void pinWanted();
  void unpinWanted();
  void notTodayWanted();
  void crewWanted(topwire::CrewId crew);
  void closed();

protected:
  void keyPressEvent(QKeyEvent* event) override;

private:
  void offerCrews();
  QPushButton* addButton(QBoxLayout& to, const char* name);

  Session* session_;
  Job job_;
  QLabel* title_;
  QLabel* reasons_;
  QPushButton* pin_ = nullptr;
  QPushButton* give_ = nullptr;
  QMenu* crews_;
  QPushButton* later_ = nullptr;
  QPushButton* why_ = nullptr;
};

}  // namespace topwire
