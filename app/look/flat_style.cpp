#include "app/look/flat_style.h"

#include "app/look/icons.h"
#include "app/look/look.h"

#include <QAbstractButton>
#include <QApplication>
#include <QPainter>
#include <QPainterPath>
#include <QStyleOption>

#include <algorithm>
#include <array>
#include <memory>

namespace topwire {

namespace {

constexpr double hairline = 1;

/// A filled shape whose outline lies wholly inside `rect`.
void paintPanel(QPainter& painter,
                const QRect& rect,
                const QColor& fill,
                const QColor& edge,
                double width = hairline) {
  const double inset = width / 2;
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(QPen{edge, width});
  painter.setBrush(fill);
  painter.drawRoundedRect(QRectF{rect}.adjusted(inset, inset, -inset, -inset),
                          measure::cardRadius - inset,
                          measure::cardRadius - inset);
  painter.restore();
}

bool isMain(const QWidget* widget) {
  return widget != nullptr && widget->property("main").toBool();
}

bool isFaulty(const QWidget* widget) {
  return widget != nullptr && widget->property("fault").toBool();
}

/// A field's outline; heavier where what is in it cannot be taken.
void paintField(QPainter& painter, const QStyleOption& option, const QWidget* widget) {
  const QPalette& p = option.palette;
  const bool enabled = (option.state & QStyle::State_Enabled) != 0;
  if (isFaulty(widget))
    paintPanel(
        painter, option.rect, p.color(QPalette::Button), p.color(QPalette::Text), 2);
  else
    paintPanel(painter,
               option.rect,
               p.color(QPalette::Button),
               p.color(enabled ? QPalette::Dark : QPalette::Mid));
}

bool isPressed(const QStyleOption& option) {
  return (option.state & (QStyle::State_On | QStyle::State_Sunken)) != 0;
}

/// A main button's words and icon, in the colour that stands out from the accent.
std::unique_ptr<QStyleOptionButton> onAccent(const QStyleOptionButton& button) {
  auto coloured = std::make_unique<QStyleOptionButton>(button);
  if ((button.state & QStyle::State_Enabled) == 0) return coloured;
  coloured->palette.setColor(QPalette::ButtonText,
                             button.palette.color(QPalette::HighlightedText));
  if (!button.icon.isNull())
    coloured->icon =
        button.icon.pixmap(button.iconSize, qApp->devicePixelRatio(), QIcon::Selected);
  return coloured;
}

void paintButton(QPainter& painter, const QStyleOption& option, const QWidget* widget) {
  const QPalette& p = option.palette;
  const bool enabled = (option.state & QStyle::State_Enabled) != 0;
  if (isMain(widget) && enabled) {
    const QColor accent = p.color(QPalette::Highlight);
    paintPanel(painter, option.rect, accent, accent);
  } else if (isPressed(option)) {
    paintPanel(
        painter, option.rect, p.color(QPalette::Midlight), p.color(QPalette::Highlight));
  } else {
    const bool hovered = enabled && (option.state & QStyle::State_MouseOver) != 0;
    paintPanel(painter,
               option.rect,
               p.color(QPalette::Button),
               p.color(!enabled  ? QPalette::Mid
                       : hovered ? QPalette::Text
                                 : QPalette::Dark));
  }
}

void paintRing(QPainter& painter, const QRect& rect) {
  constexpr double inset = measure::ringWidth / 2.0;
  constexpr int radius = measure::cardRadius + measure::ringGap;
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(QPen{baseColours(currentTheme()).focus, measure::ringWidth});
  painter.setBrush(Qt::NoBrush);
  painter.drawRoundedRect(
      QRectF{rect}.adjusted(inset, inset, -inset, -inset), radius, radius);
  painter.restore();
}

void paintHeaderSection(QPainter& painter, const QStyleOption& option) {
  painter.fillRect(option.rect, option.palette.color(QPalette::Window));
  painter.setPen(option.palette.color(QPalette::Mid));
  painter.drawLine(option.rect.bottomLeft(), option.rect.bottomRight());
  painter.drawLine(option.rect.topRight(), option.rect.bottomRight());
}

void paintMenuBarItem(const QStyle& style,
                      QPainter& painter,
                      const QStyleOptionMenuItem& item) {
  const bool chosen = (item.state & (QStyle::State_Selected | QStyle::State_Sunken)) != 0;
  painter.fillRect(item.rect,
                   item.palette.color(chosen ? QPalette::Highlight : QPalette::Window));
  style.drawItemText(&painter,
                     item.rect,
                     Qt::AlignCenter | Qt::TextShowMnemonic,
                     item.palette,
                     true,
                     item.text,
                     chosen ? QPalette::HighlightedText : QPalette::WindowText);
}

void paintCheckBox(QPainter& painter, const QStyleOption& option) {
  const bool on = (option.state & QStyle::State_On) != 0;
  const QPalette& p = option.palette;
  const QColor accent = p.color(QPalette::Highlight);
  paintPanel(painter,
             option.rect,
             on ? accent : p.color(QPalette::Button),
             on ? accent : p.color(QPalette::Dark));
  if (!on) return;
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(QPen{p.color(QPalette::HighlightedText),
                      2.2,
                      Qt::SolidLine,
                      Qt::RoundCap,
                      Qt::RoundJoin});
  const QRectF r{option.rect};
  painter.drawPolyline(
      QPolygonF{{r.left() + r.width() * 0.25, r.top() + r.height() * 0.52},
                {r.left() + r.width() * 0.43, r.top() + r.height() * 0.70},
                {r.left() + r.width() * 0.76, r.top() + r.height() * 0.30}});
  painter.restore();
}

void paintComboBox(QPainter& painter,
                   const QStyleOptionComplex& option,
                   const QRect& arrow,
                   const QWidget* widget) {
  paintField(painter, option, widget);
  constexpr int side = 14;
  QRect where{0, 0, side, side};
  where.moveCenter(arrow.center());
  paintIcon(painter, where, Icon::down, option.palette.color(QPalette::ButtonText));
}

/// A stroke up or down; muted where it goes no further.
void paintStep(QPainter& painter,
               const QStyleOptionSpinBox& box,
               const QRect& where,
               QAbstractSpinBox::StepEnabledFlag step) {
  constexpr double half = 4;
  constexpr double stroke = 1.7;
  const bool on =
      (box.state & QStyle::State_Enabled) != 0 && (box.stepEnabled & step) != 0;
  const double tip = step == QAbstractSpinBox::StepUpEnabled ? -half / 2 : half / 2;
  const QPointF middle = QRectF{where}.center();
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(QPen{box.palette.color(on ? QPalette::ButtonText : QPalette::Mid),
                      stroke,
                      Qt::SolidLine,
                      Qt::RoundCap,
                      Qt::RoundJoin});
  const std::array<QPointF, 3> line{middle + QPointF{-half, -tip},
                                    middle + QPointF{0, tip},
                                    middle + QPointF{half, -tip}};
  painter.drawPolyline(line.data(), static_cast<int>(line.size()));
  painter.restore();
}

/// A track without buttons at its ends.
QRect scrollBarPart(const QStyleOptionSlider& bar, QStyle::SubControl part) {
  constexpr int shortest = 32;
  const bool upright = bar.orientation == Qt::Vertical;
  const int room = upright ? bar.rect.height() : bar.rect.width();
  const auto range = static_cast<std::int64_t>(bar.maximum) - bar.minimum;
  const auto page = static_cast<std::int64_t>(bar.pageStep);
  const int length = range <= 0
                         ? room
                         : std::clamp(static_cast<int>(room * page / (range + page)),
                                      std::min(shortest, room),
                                      room);
  const int start = QStyle::sliderPositionFromValue(
      bar.minimum, bar.maximum, bar.sliderPosition, room - length, bar.upsideDown);
  const auto piece = [&](int from, int to) {
    return upright ? QRect{bar.rect.left(), from, bar.rect.width(), to - from}
                   : QRect{from, bar.rect.top(), to - from, bar.rect.height()};
  };
  switch (part) {
    case QStyle::SC_ScrollBarGroove:
      return bar.rect;
    case QStyle::SC_ScrollBarSlider:
      return piece(start, start + length);
    case QStyle::SC_ScrollBarSubPage:
      return piece(0, start);
    case QStyle::SC_ScrollBarAddPage:
      return piece(start + length, room);
    default:
      return {};
  }
}

void paintScrollBar(QPainter& painter, const QStyleOptionSlider& bar) {
  if (bar.maximum <= bar.minimum) return;
  const bool held = (bar.state & (QStyle::State_MouseOver | QStyle::State_Sunken)) != 0;
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(Qt::NoPen);
  painter.setBrush(bar.palette.color(held ? QPalette::PlaceholderText : QPalette::Dark));
  const QRectF handle =
      QRectF{scrollBarPart(bar, QStyle::SC_ScrollBarSlider)}.adjusted(3, 3, -3, -3);
  painter.drawRoundedRect(handle, 3, 3);
  painter.restore();
}

constexpr int fieldPadding = 6;

}  // namespace

FlatStyle::FlatStyle() : QProxyStyle(QStringLiteral("Fusion")) {}

void FlatStyle::polish(QWidget* widget) {
  QProxyStyle::polish(widget);
  if (qobject_cast<QAbstractButton*>(widget) != nullptr)
    widget->setAttribute(Qt::WA_Hover);
}

void FlatStyle::drawPrimitive(PrimitiveElement element,
                              const QStyleOption* option,
                              QPainter* painter,
                              const QWidget* widget) const {
  switch (element) {
    case PE_PanelButtonCommand:
    case PE_PanelButtonTool:
    case PE_PanelButtonBevel:
      return paintButton(*painter, *option, widget);
    case PE_PanelLineEdit: {
      const auto* frame = qstyleoption_cast<const QStyleOptionFrame*>(option);
      if (frame == nullptr || frame->lineWidth == 0) return;
      return paintField(*painter, *option, widget);
    }
    case PE_IndicatorCheckBox:
      return paintCheckBox(*painter, *option);
    case PE_FrameFocusRect:
    case PE_FrameDefaultButton:
      return;
    default:
      QProxyStyle::drawPrimitive(element, option, painter, widget);
  }
}

void FlatStyle::drawControl(ControlElement element,
                            const QStyleOption* option,
                            QPainter* painter,
                            const QWidget* widget) const {
  switch (element) {
    case CE_PushButtonBevel:
      return paintButton(*painter, *option, widget);
    case CE_FocusFrame:
      return paintRing(*painter, option->rect);
    case CE_HeaderSection:
      return paintHeaderSection(*painter, *option);
    case CE_MenuBarEmptyArea:
      return painter->fillRect(option->rect, option->palette.color(QPalette::Window));
    case CE_MenuBarItem:
      if (const auto* item = qstyleoption_cast<const QStyleOptionMenuItem*>(option))
        paintMenuBarItem(*this, *painter, *item);
      return;
    case CE_PushButtonLabel:
      if (const auto* button = qstyleoption_cast<const QStyleOptionButton*>(option))
        QProxyStyle::drawControl(
            element, isMain(widget) ? onAccent(*button).get() : option, painter, widget);
      return;
    default:
      QProxyStyle::drawControl(element, option, painter, widget);
  }
}

void FlatStyle::drawComplexControl(ComplexControl control,
                                   const QStyleOptionComplex* option,
                                   QPainter* painter,
                                   const QWidget* widget) const {
  if (control == CC_ComboBox)
    return paintComboBox(*painter,
                         *option,
                         subControlRect(CC_ComboBox, option, SC_ComboBoxArrow, widget),
                         widget);
  if (const auto* box = qstyleoption_cast<const QStyleOptionSpinBox*>(option)) {
    const auto part = [&](SubControl which) {
      return subControlRect(CC_SpinBox, option, which, widget);
    };
    paintField(*painter, *option, widget);
    paintStep(*painter, *box, part(SC_SpinBoxUp), QAbstractSpinBox::StepUpEnabled);
    paintStep(*painter, *box, part(SC_SpinBoxDown), QAbstractSpinBox::StepDownEnabled);
    return;
  }
  if (const auto* bar = qstyleoption_cast<const QStyleOptionSlider*>(option);
      bar != nullptr && control == CC_ScrollBar)
    return paintScrollBar(*painter, *bar);
  QProxyStyle::drawComplexControl(control, option, painter, widget);
}

QRect FlatStyle::subControlRect(ComplexControl control,
                                const QStyleOptionComplex* option,
                                SubControl part,
                                const QWidget* widget) const {
  if (const auto* bar = qstyleoption_cast<const QStyleOptionSlider*>(option);
      bar != nullptr && control == CC_ScrollBar)
    return scrollBarPart(*bar, part);
  const QRect rect = QProxyStyle::subControlRect(control, option, part, widget);
  // An editable box's own line edit pads itself.
  const auto* combo = qstyleoption_cast<const QStyleOptionComboBox*>(option);
  const bool words = combo != nullptr && part == SC_ComboBoxEditField && !combo->editable;
  return words ? rect.adjusted(fieldPadding, 0, 0, 0) : rect;
}

QRect FlatStyle::subElementRect(SubElement element,
                                const QStyleOption* option,
                                const QWidget* widget) const {
  const QRect rect = QProxyStyle::subElementRect(element, option, widget);
  return element == SE_LineEditContents ? rect.adjusted(fieldPadding, 0, -fieldPadding, 0)
                                        : rect;
}

QSize FlatStyle::sizeFromContents(ContentsType type,
                                  const QStyleOption* option,
                                  const QSize& size,
                                  const QWidget* widget) const {
  QSize wanted = QProxyStyle::sizeFromContents(type, option, size, widget);
  const bool control = type == CT_PushButton || type == CT_LineEdit || type == CT_ComboBox
                       || type == CT_SpinBox || type == CT_ToolButton;
  constexpr int roundedUp = 6;  // what styles add to a line of body type at most
  if (control && wanted.height() < measure::buttonHeight + roundedUp)
    wanted.setHeight(measure::buttonHeight);
  constexpr int sidePadding = 12;
  if (type == CT_PushButton || type == CT_ComboBox) wanted.rwidth() += sidePadding;
  if (type == CT_MenuBarItem) wanted += QSize{4, 6};
  return wanted;
}

int FlatStyle::pixelMetric(PixelMetric metric,
                           const QStyleOption* option,
                           const QWidget* widget) const {
  switch (metric) {
    case PM_FocusFrameHMargin:
    case PM_FocusFrameVMargin:
      return measure::ringGap + measure::ringWidth;
    case PM_IndicatorWidth:
    case PM_IndicatorHeight:
      return 22;
    case PM_ButtonIconSize:
      return 18;
    case PM_ScrollBarExtent:
      return 12;
    case PM_ButtonShiftHorizontal:
    case PM_ButtonShiftVertical:
      return 0;
    default:
      return QProxyStyle::pixelMetric(metric, option, widget);
  }
}

int FlatStyle::styleHint(StyleHint hint,
                         const QStyleOption* option,
                         const QWidget* widget,
                         QStyleHintReturn* answer) const {
  if (hint == SH_EtchDisabledText || hint == SH_DitherDisabledText
      || hint == SH_ComboBox_Popup)
    return 0;
  if (hint == SH_FocusFrame_AboveWidget) return 1;
  if (hint == SH_Table_GridLineColor && option != nullptr)
    return static_cast<int>(option->palette.color(QPalette::Mid).rgba());
  return QProxyStyle::styleHint(hint, option, widget, answer);
}

}  // namespace topwire
