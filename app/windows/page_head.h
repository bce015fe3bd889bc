#pragma once

#include <QBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QWidget>

namespace topwire {

/// A page's title, the line under it, and its buttons at the right.
class PageHead : public QWidget {
  Q_OBJECT

public:
  explicit PageHead(QWidget* parent = nullptr);

  void say(const QString& title, const QString& subtitle);
  /// `name` is the button's object name.
  QPushButton* addButton(const QString& words, const char* name);

private:
  QLabel* title_;
  QLabel* subtitle_;
  QHBoxLayout* buttons_;
};

}  // namespace topwire
