#include "app/windows/questions.h"

#include <QCoreApplication>
#include <QFileDialog>
#include <QMessageBox>
#include <QPushButton>

namespace topwire {

namespace {

QString orchardFilter() {
  return QCoreApplication::translate("Questions", "Orchard files (*.topwire)");
}

QString programmeFilter() {
  return QCoreApplication::translate("Questions", "Programmes (*.toml)");
}

}  // namespace

bool DialogQuestions::confirm(QWidget* parent,
                              const QString& question,
                              const QString& deed) {
  QMessageBox box{parent};
  box.setWindowTitle(QStringLiteral("Topwire"));
  box.setTextFormat(Qt::PlainText);
  box.setText(question);
  const QAbstractButton* agree = box.addButton(deed, QMessageBox::AcceptRole);
  QPushButton* leave =
      box.addButton(QCoreApplication::translate("Questions", "&Leave it as it is"),
                    QMessageBox::RejectRole);
  box.setDefaultButton(leave);
  box.setEscapeButton(leave);
  box.exec();
  return box.clickedButton() == agree;
}

QString DialogQuestions::fileToOpen(QWidget* parent) {
  return QFileDialog::getOpenFileName(
      parent,
      QCoreApplication::translate("Questions", "Open an orchard"),
      {},
      orchardFilter());
}

QString DialogQuestions::weatherToOpen(QWidget* parent) {
  return QFileDialog::getOpenFileName(
      parent,
      QCoreApplication::translate("Questions", "Bring in daily weather"),
      {},
      QCoreApplication::translate("Questions",
                                  "Daily weather (*.csv *.dly *.txt);;All files (*)"));
}

QString DialogQuestions::programmeToOpen(QWidget* parent) {
  return QFileDialog::getOpenFileName(
      parent,
      QCoreApplication::translate("Questions", "Bring in a programme"),
      {},
      programmeFilter());
}

QString DialogQuestions::programmeToMake(QWidget* parent, const QString& suggestion) {
  return QFileDialog::getSaveFileName(
      parent,
      QCoreApplication::translate("Questions", "Save the programme as a file"),
      suggestion,
      programmeFilter());
}

QString DialogQuestions::fileToMake(QWidget* parent,
                                    const QString& title,
                                    const QString& suggestion) {
  QFileDialog dialog{parent, title, suggestion, orchardFilter()};
  dialog.setAcceptMode(QFileDialog::AcceptSave);
  dialog.setDefaultSuffix(QStringLiteral("topwire"));
  dialog.selectFile(suggestion);
  return dialog.exec() == QDialog::Accepted ? dialog.selectedFiles().value(0) : QString{};
}

void DialogQuestions::show(QWidget* parent, const QString& title, const QString& text) {
  QMessageBox box{parent};
  box.setWindowTitle(title);
  box.setTextFormat(Qt::PlainText);
  box.setText(text);
  box.addButton(QCoreApplication::translate("Questions", "&Close"),
                QMessageBox::RejectRole);
  box.exec();
}

}  // namespace topwire
