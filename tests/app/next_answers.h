#pragma once

#include "app/windows/questions.h"

#include <QStringList>

namespace topwire::testing {

/// Answers every question at once with what was laid out for it, and keeps what was
/// asked.
class NextAnswers final : public Questions {
public:
  bool confirm(QWidget*, const QString& question, const QString&) override {
    asked << question;
    return agrees;
  }

  QString fileToOpen(QWidget*) override { return file; }

  QString weatherToOpen(QWidget*) override { return file; }

  QString programmeToOpen(QWidget*) override { return file; }

  QString programmeToMake(QWidget*, const QString&) override { return file; }

  QString fileToMake(QWidget*, const QString&, const QString&) override { return file; }

  void show(QWidget*, const QString&, const QString& text) override { shown << text; }

  bool agrees = true;
  QString file;
  QStringList asked;
  QStringList shown;
};

}  // namespace topwire::testing
