#pragma once

#include "app/models/session.h"
#include "app/paper/material_pages.h"

#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QTableWidget>
#include <QWidget>

namespace topwire {

class PageHead;

/// What to pick up for a week, a season or a new planting: counts, what to buy, and for
/// which work.
class MaterialPage : public QWidget {
  Q_OBJECT

public:
  explicit MaterialPage(Session& session, QWidget* parent = nullptr);

  void showWeek(IsoWeek week);
  Done savePdf(const QString& path) const;

protected:
  void showEvent(QShowEvent* event) override;

private:
  enum class Span { week, season, planting };

  void addChoices();
  void addDeeds();
  void startAnew();
  void refresh();
  void offerPlantings();
  void step(int by);
  void fillTable();
  MaterialList listChosen();
  Span span() const;
  QString spanText() const;
  MaterialSheet sheet() const;
  std::vector<Page> pages() const;
  QString fileName() const;
  void copy();
  void print();
  void askForPdf();

  Session* session_;
  IsoWeek week_{};
  Season season_{};
  MaterialList list_;
  PageHead* head_;
  QComboBox* span_;
  QComboBox* plantings_;
  QPushButton* earlier_;
  QPushButton* later_;
  std::vector<QPushButton*> deeds_;
  QTableWidget* table_;
  QLabel* empty_;
  QLabel* notes_;
};

}  // namespace topwire
