#pragma once

#include "app/paper/page.h"
#include "core/base/result.h"

#include <QImage>

class QPagedPaintDevice;
class QPainter;

namespace topwire {

/// Paints one page with its top left corner in the painter's origin, at `scale` of the
/// painter's units a point. Screen, printer and PDF all come through here.
void paintPage(QPainter& painter, const Page& page, double scale);

/// The page on white, for a preview.
QImage imageOf(const Page& page, double dotsPerInch);

/// Sends the pages to a printer or a PDF, edge to edge on paper of their own size. There
/// must be at least one.
Done printPages(QPagedPaintDevice& device, const std::vector<Page>& pages);

/// Writes a PDF with its fonts inside. What stood at `path` stays until all is written.
Done writePdf(const QString& path, const std::vector<Page>& pages, const QString& title);

}  // namespace topwire
