#pragma once

#include "core/programme/programme.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLineEdit>
#include <QSpinBox>
#include <QWidget>

#include <vector>

namespace topwire {

/// The same words in both languages, side by side.
class WordsField : public QWidget {
  Q_OBJECT

public:
  explicit WordsField(QWidget* parent = nullptr);

  void setWords(const Words& words);
  Words words() const;

private:
  QLineEdit* english_;
  QLineEdit* spanish_;
};

/// Some of a few choices, as boxes in a line.
class ChoicesField : public QWidget {
  Q_OBJECT

public:
  explicit ChoicesField(const QStringList& names,
                        int columns = 3,
                        QWidget* parent = nullptr);

  void setChosen(std::size_t choice, bool chosen);
  bool isChosen(std::size_t choice) const;

private:
  std::vector<QCheckBox*> boxes_;
};

/// A day a window hangs on: what it hangs on, and how many months and days from there.
class AnchorField : public QWidget {
  Q_OBJECT

public:
  /// `none`: it may hang on nothing at all.
  explicit AnchorField(bool none, QWidget* parent = nullptr);

  /// `programme` lends the names of the other work it may come after.
  void setAnchor(const std::optional<Anchor>& anchor, const Programme& programme);
  std::optional<Anchor> anchor() const;

private:
  enum Kind { nothing, stage, planting, month, work };

  void follow();
  Kind kind() const;
  void choosePoint(const AnchorPoint& point);

  QComboBox* kind_;
  QComboBox* stage_;
  QComboBox* month_;
  QSpinBox* day_;
  QComboBox* season_;
  QComboBox* work_;
  QWidget* offset_;
  QSpinBox* months_;
  QSpinBox* days_;
};

}  // namespace topwire
