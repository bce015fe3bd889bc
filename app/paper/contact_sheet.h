#pragma once

#include "app/paper/page.h"
#include "core/base/phrase.h"
#include "core/programme/programme.h"

#include <optional>
#include <vector>

namespace topwire {

/// The first leaf an operation is done in; 0 for work before the planting day, 1 for work
/// on it and soon after.
int firstLeafOf(const Operation& operation);

/// One operation of a programme and how it is drawn.
struct OperationArt {
  const Operation* operation;
  int leaf;
  Drawing drawing;
};

/// Every operation that has a drawing, in the programme's order, in its own first leaf or
/// in `leaf`; those not done in that leaf are left out.
std::vector<OperationArt> artOf(const Programme& programme, std::optional<int> leaf = {});

/// All of them in a grid on one page, 3 cm wide as they are on a full work sheet, with
/// the operations' names below.
Page contactSheet(const std::vector<OperationArt>& art, Language language);

/// A page of drawings and text as an SVG document.
QString toSvg(const Page& page);

}  // namespace topwire
