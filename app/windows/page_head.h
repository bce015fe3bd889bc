#pragma once

#include <QBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QWidget>

namespace topwire {

/// A page's title, the line under it, and its buttons at the right, or below where they
/// don't fit beside it.
class PageHead : public QWidget {
  Q_OBJECT

public:
  explicit PageHead(QWidget* parent = nullptr);

  void say(const QString& title, const QString& subtitle);
  /// `name` is the button's object name.
  QPushButton* addButton(const QString& words, const char* name);
  /// Before the buttons or among them: a choice of what the page shows.
  void addChoice(QWidget* choice);

protected:
  void resizeEvent(QResizeEvent* event) override;

private:
  void arrange();

  QBoxLayout* line_;
  QLabel* title_;
  QLabel* subtitle_;
  QHBoxLayout* buttons_;
};

}  // namespace topwire
