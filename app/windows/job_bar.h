#pragma once

#include "app/look/card.h"
#include "app/windows/job_card.h"

#include <QBoxLayout>
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
    QString nextDay;  ///< when it could be done instead; empty where there is none
  };

  void setJob(const Job& job);
  void unfoldReasons(bool open);

  bool hasReasonsOpen() const { return !reasons_->isHidden(); }

Q_SIGNALS:
  void pinWanted();
  void unpinWanted();
  void notTodayWanted();

private:
  QPushButton* addButton(QBoxLayout& to, const char* name);

  Session* session_;
  Job job_;
  QLabel* title_;
  QLabel* reasons_;
  QPushButton* pin_ = nullptr;
  QPushButton* later_ = nullptr;
  QPushButton* why_ = nullptr;
};

}  // namespace topwire
