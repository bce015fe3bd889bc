#pragma once

#include <QString>

class QWidget;

namespace topwire {

/// Everything that stops a person until it is answered. The windows ask through this, so
/// that tests answer without a dialog.
class Questions {
public:
  virtual ~Questions() = default;

  /// True for the deed, false for leaving things as they are, which Escape does too.
  virtual bool confirm(QWidget* parent, const QString& question, const QString& deed) = 0;
  /// A path; empty where the person thought better of it.
  virtual QString fileToOpen(QWidget* parent) = 0;
  virtual QString weatherToOpen(QWidget* parent) = 0;
  virtual QString programmeToOpen(QWidget* parent) = 0;
  virtual QString programmeToMake(QWidget* parent, const QString& suggestion) = 0;
  virtual QString fileToMake(QWidget* parent,
                             const QString& title,
                             const QString& suggestion) = 0;
  /// Something to read, with one button to close it.
  virtual void show(QWidget* parent, const QString& title, const QString& text) = 0;
};

/// Asks with the platform's dialogs.
class DialogQuestions final : public Questions {
public:
  bool confirm(QWidget* parent, const QString& question, const QString& deed) override;
  QString fileToOpen(QWidget* parent) override;
  QString weatherToOpen(QWidget* parent) override;
  QString programmeToOpen(QWidget* parent) override;
  QString programmeToMake(QWidget* parent, const QString& suggestion) override;
  QString fileToMake(QWidget* parent,
                     const QString& title,
                     const QString& suggestion) override;
  void show(QWidget* parent, const QString& title, const QString& text) override;
};

}  // namespace topwire
