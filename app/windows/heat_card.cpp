#include "app/windows/heat_card.h"

#include "app/look/icons.h"
#include "app/look/look.h"
#include "app/words/say.h"

#include <QHBoxLayout>
#include <QMenu>
#include <QVBoxLayout>

namespace topwire {

HeatCard::HeatCard(QWidget* parent) : Card(QPalette::Base, parent), view_(new HeatView) {
  setObjectName(QStringLiteral("heatCard"));
  view_->setObjectName(QStringLiteral("heatView"));
  auto* lines = new QVBoxLayout{this};
  lines->setContentsMargins(15, 9, 15, 12);
  lines->setSpacing(10);
  lines->addWidget(head());
  lines->addWidget(view_, 1);
  choose(measure_);
}

QWidget* HeatCard::head() {
  auto* box = new QWidget;
  auto* line = new QHBoxLayout{box};
  line->setContentsMargins(0, 0, 0, 0);
  line->setSpacing(8);
  auto* words = new QVBoxLayout;
  words->setSpacing(0);
  title_ = textLabel({}, TypeSize::name, true);
  title_->setObjectName(QStringLiteral("heatTitle"));
  subtitle_ = mutedLabel({});
  subtitle_->setObjectName(QStringLiteral("heatSubtitle"));
  subtitle_->setWordWrap(true);
  subtitle_->setMinimumWidth(1);
  words->addWidget(title_);
  words->addWidget(subtitle_);
  line->addLayout(words, 1);
  units_ = switchTo(HeatMeasure::heatUnits, tr("Heat &units"), "heatUnits");
  days_ = switchTo(HeatMeasure::degreeDays, tr("De&gree days"), "degreeDays");
  auto* print = new QPushButton{tr("&Print")};
  print->setObjectName(QStringLiteral("printChart"));
  print->setIcon(iconFor(Icon::print));
  auto* ways = new QMenu{print};
  ways->addAction(tr("&Print the chart…"), this, &HeatCard::printWanted);
  ways->addAction(tr("&Save it as PDF…"), this, &HeatCard::pdfWanted);
  connect(print, &QPushButton::clicked, this, [print, ways] {
    ways->popup(print->mapToGlobal(QPoint{0, print->height()}));
  });
  for (QPushButton* button : {units_, days_, print})
    line->addWidget(button, 0, Qt::AlignTop);
  return box;
}

QPushButton* HeatCard::switchTo(HeatMeasure measure,
                                const QString& words,
                                const char* name) {
  auto* button = new QPushButton{words};
  button->setObjectName(QLatin1String(name));
  button->setCheckable(true);
  connect(button, &QPushButton::clicked, this, [this, measure] {
    choose(measure);
    Q_EMIT measureChosen(measure);
  });
  return button;
}

void HeatCard::choose(HeatMeasure measure) {
  measure_ = measure;
  units_->setChecked(measure == HeatMeasure::heatUnits);
  days_->setChecked(measure == HeatMeasure::degreeDays);
}

void HeatCard::setScene(const HeatScene& scene, const QString& measured) {
  title_->setText(
      say(Sentence{phrase("Weather", "Heat since %1"),
                   {voiceIn(language()).dayOfYear(scene.days.first).toStdString()}}));
  subtitle_->setText(measured);
  view_->setScene(scene);
}

}  // namespace topwire
