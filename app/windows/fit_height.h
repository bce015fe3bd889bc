#pragma once

#include <QScrollArea>

namespace topwire {

/// Lets a list scroll by itself, or, on a page too low for that, take the height of its
/// content at this width and leave scrolling to the page. To be called again whenever
/// either changes.
void fitHeight(QScrollArea& area, bool scrolls, int width);

}  // namespace topwire
