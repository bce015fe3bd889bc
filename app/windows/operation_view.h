#pragma once

#include "app/look/card.h"
#include "app/models/session.h"
#include "app/paper/drawing.h"

#include <QGridLayout>

#include <optional>

namespace topwire {

/// The line drawing an operation names, in the colours of the theme.
class OperationDrawing : public QWidget {
  Q_OBJECT

public:
  explicit OperationDrawing(QWidget* parent = nullptr);

  void setDrawing(const std::string& name, int leaf);

  QSize sizeHint() const override { return {200, 150}; }

protected:
  void paintEvent(QPaintEvent* event) override;

private:
  std::optional<Drawing> drawing_;
};

/// One operation to read: what to do and how, when, on which trees, and why.
class OperationView : public Card {
  Q_OBJECT

public:
  explicit OperationView(Session& session, QWidget* parent = nullptr);

  void show(const Operation& operation, const Programme& programme);

private:
  QWidget* makeHead();
  void addFacts(const Operation& operation, const Programme& programme);
  void addFact(const QString& name, const QString& text);

  Session* session_;
  QLabel* name_;
  QLabel* reach_;
  QLabel* how_;
  QLabel* doneWhen_;
  OperationDrawing* drawing_;
  QGridLayout* facts_;
};

}  // namespace topwire
