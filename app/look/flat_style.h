#pragma once

#include <QProxyStyle>

namespace topwire {

/// Fusion without its gradients: controls are a flat surface with an outline and a
/// radius, 36 px high, and the focus ring stands clear of them.
///
/// A push button that is its form's main one (`setDefault`, or the property "main") is
/// filled with the accent; a checked one takes the accent's tint.
class FlatStyle : public QProxyStyle {
  Q_OBJECT

public:
  FlatStyle();

  void polish(QWidget* widget) override;
  using QProxyStyle::polish;

  void drawPrimitive(PrimitiveElement element,
                     const QStyleOption* option,
                     QPainter* painter,
                     const QWidget* widget) const override;
  void drawControl(ControlElement element,
                   const QStyleOption* option,
                   QPainter* painter,
                   const QWidget* widget) const override;
  void drawComplexControl(ComplexControl control,
                          const QStyleOptionComplex* option,
                          QPainter* painter,
                          const QWidget* widget) const override;
  QRect subControlRect(ComplexControl control,
                       const QStyleOptionComplex* option,
                       SubControl part,
                       const QWidget* widget) const override;
  QRect subElementRect(SubElement element,
                       const QStyleOption* option,
                       const QWidget* widget) const override;
  QSize sizeFromContents(ContentsType type,
                         const QStyleOption* option,
                         const QSize& size,
                         const QWidget* widget) const override;
  int pixelMetric(PixelMetric metric,
                  const QStyleOption* option,
                  const QWidget* widget) const override;
  int styleHint(StyleHint hint,
                const QStyleOption* option,
                const QWidget* widget,
                QStyleHintReturn* answer) const override;
};

}  // namespace topwire
