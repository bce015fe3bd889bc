#include "app/windows/beside_panel.h"

#include <QHBoxLayout>
#include <QKeyEvent>

namespace topwire {

BesidePanel::BesidePanel(const QString& title, const QString& purpose, QWidget* parent)
    : Card(QPalette::Base, parent), lines_(new QVBoxLayout(this)) {
  lines_->setContentsMargins(15, 10, 15, 12);
  lines_->setSpacing(8);
  auto* head = new QHBoxLayout;
  QLabel* name = textLabel(title, TypeSize::head, true);
  name->setWordWrap(true);
  auto* close = new QPushButton{tr("&Close")};
  close->setObjectName(QStringLiteral("closePanel"));
  head->addWidget(name, 1);
  head->addWidget(close, 0, Qt::AlignTop);
  QLabel* words = mutedLabel(purpose);
  words->setWordWrap(true);
  words->setMinimumWidth(1);
  lines_->addLayout(head);
  lines_->addWidget(words);
  connect(close, &QPushButton::clicked, this, &BesidePanel::closed);
}

void BesidePanel::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Escape) return Q_EMIT closed();
  Card::keyPressEvent(event);
}

}  // namespace topwire
