#include "app/windows/fit_height.h"

#include <QLayout>

#include <algorithm>

namespace topwire {

void fitHeight(QScrollArea& area, bool scrolls, int width) {
  area.setVerticalScrollBarPolicy(scrolls ? Qt::ScrollBarAsNeeded
                                          : Qt::ScrollBarAlwaysOff);
  int least = 160;
  if (!scrolls && area.widget() != nullptr) {
    QLayout* content = area.widget()->layout();
    content->activate();
    const int wide = std::max(width - 2, 100);
    least = content->hasHeightForWidth() ? content->totalHeightForWidth(wide)
                                         : content->totalSizeHint().height();
  }
  if (area.minimumHeight() != least) area.setMinimumHeight(least);
}

}  // namespace topwire
