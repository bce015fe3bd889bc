#pragma once

#include "core/calendar/day.h"

#include <QDate>
#include <QDateEdit>

namespace topwire {

QDate dateOf(Day day);
Day dayOf(const QDate& date);

/// A date edit that opens a calendar and writes the year in full, in the reader's order.
QDateEdit* dayField();

}  // namespace topwire
