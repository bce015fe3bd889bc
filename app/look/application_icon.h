#pragma once

#include <QIcon>

namespace topwire {

/// A young tree tied to three wires; the drawing of resources/icons/topwire.svg, painted,
/// so that no image plug-in is needed to show it.
QIcon applicationIcon();

}  // namespace topwire
