#pragma once

#include "core/base/result.h"

#include <QGridLayout>
#include <QLabel>
#include <QWidget>

#include <functional>
#include <vector>

namespace topwire {

/// Fields with their labels above them and what is wrong with them below, in two columns.
/// While a person types, only the fields already touched are faulted; on saving, all.
class Form : public QWidget {
  Q_OBJECT

public:
  explicit Form(QWidget* parent = nullptr);

  /// `place` is what problems call the field; the editor's object name is "field-place".
  /// Line edits, combo boxes and date edits are watched.
  void add(const QString& place,
           const QString& label,
           QWidget* editor,
           const QString& hint = {});
  /// The same across both columns. An editor made of several fields is watched in all.
  void addWide(const QString& place,
               const QString& label,
               QWidget* editor,
               const QString& hint = {});

  /// Those of touched fields, each beside its field; one without a field stands on top.
  void showTouched(const Problems& problems);
  /// All of them, and the keyboard goes to the first.
  void showAll(const Problems& problems);
  /// As it is after filling the fields from a record.
  void forgetTouches();
  void setHint(const QString& place, const QString& hint);

Q_SIGNALS:
  void edited();

private:
  struct Field {
    QString place;
    QWidget* editor;
    QLabel* message;
    QString hint;
    bool touched = false;
  };

  void put(const QString& place,
           const QString& label,
           QWidget* editor,
           const QString& hint,
           int width);
  Field* find(const QString& place);
  void watch(QWidget* editor, const QString& place);
  void touch(const QString& place);
  void put(Field& field, const QString& fault);
  void show(const Problems& problems, bool onlyTouched);

  QGridLayout* grid_;
  QLabel* general_;
  std::vector<Field> fields_;
  int cells_ = 0;  ///< taken so far, row by row
};

}  // namespace topwire
