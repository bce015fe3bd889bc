#pragma once

#include <QLabel>
#include <QPushButton>
#include <QWidget>

#include <functional>

namespace topwire {

/// The line at the foot of the window. What happened stands there until the next thing
/// does; trouble stays until the person puts it away, and nothing covers it meanwhile.
class NoticeBar : public QWidget {
  Q_OBJECT

public:
  explicit NoticeBar(QWidget* parent = nullptr);

  /// Something a person can do about it, as a button.
  struct Remedy {
    QString words;
    std::function<void()> deed;
  };

  void tell(const QString& text, const Remedy& remedy = {});
  void trouble(const QString& text, const Remedy& remedy = {});
  void clear();
  QString text() const;

  bool isTrouble() const { return trouble_; }

protected:
  void paintEvent(QPaintEvent* event) override;

private:
  void put(const QString& text, const Remedy& remedy);

  bool trouble_ = false;
  std::function<void()> deed_;
  QLabel* text_;
  QPushButton* remedy_;
  QPushButton* dismiss_;
};

}  // namespace topwire
