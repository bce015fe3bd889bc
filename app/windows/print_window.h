#pragma once

#include "app/models/session.h"
#include "app/paper/sheet_layout.h"

#include <QComboBox>
#include <QDialog>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>

#include <vector>

namespace topwire {

/// What printers hold where the reader lives.
Paper usualPaper();

/// Pages below each other, as wide as there is room.
class PagePreview : public QWidget {
  Q_OBJECT

public:
  explicit PagePreview(QWidget* parent = nullptr);

  void setPages(std::vector<Page> pages);

  bool hasHeightForWidth() const override { return true; }

  int heightForWidth(int width) const override;
  QSize sizeHint() const override;

protected:
  void paintEvent(QPaintEvent* event) override;

private:
  double scaleFor(int width) const;

  std::vector<Page> pages_;
};

/// The week's sheet before it is printed: which week, which paper, which language.
class PrintWindow : public QDialog {
  Q_OBJECT

public:
  PrintWindow(Session& session, IsoWeek week, QWidget* parent = nullptr);

  IsoWeek week() const { return week_; }

  const std::vector<Page>& pages() const { return pages_; }

  void setWeek(IsoWeek week);
  Done savePdf(const QString& path);

protected:
  void keyPressEvent(QKeyEvent* event) override;

private:
  QWidget* choices();
  QWidget* weekChooser();
  QWidget* deeds();
  void layOutPages();
  void print();
  void askForPdf();
  void tell(const Done& done);
  QString suggestedName() const;

  Session* session_;
  IsoWeek week_;
  std::vector<Page> pages_;
  QLabel* weekLabel_ = nullptr;
  QLabel* summary_ = nullptr;
  QLabel* problem_ = nullptr;
  QComboBox* paper_ = nullptr;
  QComboBox* language_ = nullptr;
  QPushButton* print_ = nullptr;
  PagePreview* preview_ = nullptr;
  QScrollArea* area_ = nullptr;
};

}  // namespace topwire
