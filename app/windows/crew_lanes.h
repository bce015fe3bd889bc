#pragma once

#include "app/windows/crew_head.h"
#include "app/windows/job_card.h"

#include <QVBoxLayout>

#include <vector>

namespace topwire {

/// A crew's cards on the hours of the day; each gang of a split crew has lines of its
/// own.
class LaneCards : public QWidget {
  Q_OBJECT

public:
  explicit LaneCards(QWidget* parent = nullptr);

  /// Takes the cards over; they stand by gang, then start. `nothing` is said where there
  /// are none.
  void setCards(std::vector<JobCard*> cards, const DayAxis& axis, const QString& nothing);

  const std::vector<JobCard*>& cards() const { return cards_; }

  /// A card is held over this lane.
  void setTarget(bool target);

  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;

  bool hasHeightForWidth() const override { return true; }

  int heightForWidth(int width) const override;

protected:
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

private:
  /// Where each card stands at this width, and the height of all.
  int layOut(int width, std::vector<QRect>& places) const;
  void place();

  std::vector<JobCard*> cards_;
  DayAxis axis_;
  QString nothing_;
  bool target_ = false;
};

/// A lane for each crew, one below the other, on the same hours.
class CrewLanes : public QWidget {
  Q_OBJECT

public:
  explicit CrewLanes(Session& session, QWidget* parent = nullptr);

  /// Keeps the keyboard where it was, as far as what had it is still there.
  void setLanes(const std::vector<CrewLane>& lanes,
                const DayAxis& axis,
                const CautionsByPlanting& cautions);
  void choose(const std::optional<JobPlace>& place);
  /// The card there, or of that task anywhere.
  JobCard* cardAt(const JobPlace& place) const;

Q_SIGNALS:
  void asked(const topwire::JobPlace& place, topwire::JobDeed deed);
  void carriedTo(const topwire::JobPlace& place, topwire::CrewId crew);
  void turnoutWanted(topwire::CrewId crew, int workers);

private:
  struct Lane {
    CrewId crew;
    CrewHead* head;
    LaneCards* cards;
  };

  void rebuild(const std::vector<CrewLane>& lanes);
  std::vector<JobCard*> makeCards(const CrewLane& lane,
                                  const CautionsByPlanting& cautions);
  void listenTo(JobCard& card);
  void step(const JobCard& from, Qt::Key arrow);
  void stepAlong(const JobCard& from, int steps);
  void stepAcross(const JobCard& from, int lanes);
  void carry(const JobPlace& place, QPoint where, bool dropped);
  std::optional<JobPlace> focusedPlace() const;

  Session* session_;
  QVBoxLayout* lines_;
  std::vector<Lane> lanes_;
  std::optional<JobPlace> chosen_;
};

}  // namespace topwire
