#include "app/windows/state_legend.h"

#include "app/look/look.h"
#include "app/look/state_shape.h"
#include "app/look/tokens.h"
#include "app/words/say.h"

#include <QFontMetricsF>
#include <QLocale>
#include <QPainter>
#include <QStringList>

namespace topwire {

namespace {

constexpr double shapeSide = 12;
constexpr double gap = 12;
constexpr double afterShape = 5;

constexpr std::array order{TaskState::late,
                           TaskState::closing,
                           TaskState::open,
                           TaskState::waiting,
                           TaskState::done,
                           TaskState::setAside,
                           TaskState::lapsed};

}  // namespace

StateLegend::StateLegend(QWidget* parent) : QWidget(parent) {
  QSizePolicy policy{QSizePolicy::Expanding, QSizePolicy::Preferred};
  policy.setHeightForWidth(true);
  setSizePolicy(policy);
}

void StateLegend::setCounts(const std::array<int, 7>& counts) {
  const QFontMetricsF bold{fontOf(TypeSize::small, true)};
  items_.clear();
  QStringList words;
  for (const TaskState state : order) {
    const int count = counts.at(static_cast<std::size_t>(state));
    if (count == 0) continue;
    Item item{state, nameOf(state), QLocale{}.toString(count), 0};
    item.width = shapeSide + afterShape
                 + bold.horizontalAdvance(item.word + QLatin1Char(' ') + item.count)
                 + gap;
    words << item.word + QLatin1Char(' ') + item.count;
    items_.push_back(item);
  }
  setAccessibleName(words.join(QStringLiteral(", ")));
  updateGeometry();
  update();
}

template <class Place>
int StateLegend::flow(int width, const Place& place) const {
  const double line = QFontMetricsF{fontOf(TypeSize::small)}.height() + 2;
  double x = 0;
  double y = 0;
  for (const Item& item : items_) {
    if (x > 0 && x + item.width - gap > width) {
      x = 0;
      y += line;
    }
    place(item, x, y);
    x += item.width;
  }
  return static_cast<int>(y + line);
}

QSize StateLegend::sizeHint() const {
  double wide = 0;
  for (const Item& item : items_) wide += item.width;
  return {static_cast<int>(wide), heightForWidth(static_cast<int>(wide) + 1)};
}

QSize StateLegend::minimumSizeHint() const {
  return {120, heightForWidth(width())};
}

int StateLegend::heightForWidth(int width) const {
  return flow(width, [](const Item&, double, double) {});
}

void StateLegend::paintEvent(QPaintEvent*) {
  QPainter painter{this};
  const QFont font = fontOf(TypeSize::small, true);
  const QFontMetricsF metrics{font};
  const double top = (height() - heightForWidth(width())) / 2.0;
  painter.setFont(font);
  flow(width(), [&](const Item& item, double x, double y) {
    const double line = top + y;
    paintShape(painter,
               {x, line + (metrics.height() - shapeSide) / 2 + 1, shapeSide, shapeSide},
               item.state);
    const double left = x + shapeSide + afterShape;
    painter.setPen(stateColours(currentTheme(), item.state).ink);
    painter.drawText(QPointF{left, line + 1 + metrics.ascent()}, item.word);
    painter.setPen(baseColours(currentTheme()).text);
    painter.drawText(
        QPointF{left + metrics.horizontalAdvance(item.word + QLatin1Char(' ')),
                line + 1 + metrics.ascent()},
        item.count);
  });
}

}  // namespace topwire
