#pragma once

#include "core/planning/progress.h"

#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>
#include <QWidget>

#include <optional>
#include <vector>

namespace topwire {

/// A line at the side of a page.
struct SideLine {
  enum class As { figure, name, words, small, state, button, link };
  As as = As::words;
  QString text;
  TaskState state = TaskState::open;  ///< of the ink of a figure or a state's word
  QString id;                         ///< of a button or link: its object name

  friend bool operator==(const SideLine&, const SideLine&) = default;
};

/// Lines that belong together; on a card of their own where it has an edge.
struct SideCard {
  std::optional<TaskState> edge;
  std::vector<SideLine> lines;

  friend bool operator==(const SideCard&, const SideCard&) = default;
};

/// A heading and what stands under it. Left alone where nothing changed, so that the
/// keyboard stays where it is.
class SideSection : public QWidget {
  Q_OBJECT

public:
  /// Shows `most` cards until asked for the rest.
  SideSection(const QString& title,
              const char* name,
              int most,
              QWidget* parent = nullptr);

  void setCards(std::vector<SideCard> cards, bool enabled);

Q_SIGNALS:
  void pressed(const QString& id);

private:
  void refill();
  QWidget* make(const SideCard& card);
  QWidget* make(const SideLine& line);
  QPushButton* makeButton(const SideLine& line);
  void addFold();

  std::size_t most_;
  bool unfolded_ = false;
  bool enabled_ = true;
  std::vector<SideCard> cards_;
  QVBoxLayout* lines_;
  QVBoxLayout* body_;
};

}  // namespace topwire
