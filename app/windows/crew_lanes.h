#pragma once

#include "app/windows/crew_head.h"
#include "app/windows/job_card.h"

#include <QVBoxLayout>

#include <vector>

namespace topwire {

/// A crew's cards on the hours of the day; each gang of a split crew has lines of its
/// own. Where there are more than can stand on the hours, a bar holds the hours and the
/// cards, smaller and all alike, stand under it in their order.
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
  /// A gang's cards, as indices of `cards_`.
  struct Gang {
    std::size_t first = 0;
    std::size_t end = 0;
    int barTop = -1;  ///< where its bar is; below 0: it has none
  };

  /// Where the cards stand.
  struct Plan {
    std::vector<QRect> cards;
    std::vector<Gang> gangs;
    int height = 0;
  };

  std::size_t gangEnd(std::size_t first) const;
  Plan layOut(int width) const;
  int layOutOnHours(const Gang& gang, int width, int top, Plan& plan) const;
  int layOutAlike(const Gang& gang, int width, int top, Plan& plan) const;
  int levelLine(std::size_t first, std::size_t end, Plan& plan) const;
  void paintBar(QPainter& painter, const Gang& gang) const;
  void place();

  std::vector<JobCard*> cards_;
  std::vector<Gang> gangs_;
  DayAxis axis_;
  QString nothing_;
  bool target_ = false;
};

/// A lane for each crew, one below the other, on the same hours. Tab goes from a crew's
/// steps to one of its cards and on to the next crew; the arrows go among the cards.
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
  void orderTabs();
  void makeTabStop(const JobCard& card);
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
