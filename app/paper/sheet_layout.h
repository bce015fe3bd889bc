#pragma once

#include "app/paper/page.h"
#include "core/sheet/work_sheet.h"

namespace topwire {

enum class Paper { a4, letter };

/// Upright, with margins of 10 mm all round.
struct PageFormat {
  static constexpr double margin = millimetres(10);

  Paper paper = Paper::a4;

  /// In points. A4 is 210 x 297 mm (ISO 216), Letter 8.5 x 11 in (ANSI/ASME Y14.1).
  QSizeF size() const;
  QRectF content() const;
};

/// The week's sheet as pages, in one language. A job's head, drawing and first line of
/// boxes stand together; drawings are as large (3.4 to 5.2 cm) as they can be without
/// taking another page. A week without work gives one page that says so. Needs a
/// QGuiApplication, whose fonts it measures.
std::vector<Page> layOut(const WorkSheet& sheet, PageFormat format, Language language);

}  // namespace topwire
