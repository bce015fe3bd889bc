#include "app/windows/day_field.h"

#include <QLocale>

namespace topwire {

QDate dateOf(Day day) {
  const CivilDate c = civil(day);
  return {static_cast<int>(c.year()),
          static_cast<int>(static_cast<unsigned>(c.month())),
          static_cast<int>(static_cast<unsigned>(c.day()))};
}

Day dayOf(const QDate& date) {
  return dayOf(date.year(),
               static_cast<unsigned>(date.month()),
               static_cast<unsigned>(date.day()));
}

QDateEdit* dayField() {
  auto* field = new QDateEdit;
  field->setCalendarPopup(true);
  QString format = QLocale().dateFormat(QLocale::ShortFormat);
  if (!format.contains(QLatin1String("yyyy")))
    format.replace(QLatin1String("yy"), QLatin1String("yyyy"));
  field->setDisplayFormat(QLocale().language() == QLocale::English
                                  && QLocale().territory() != QLocale::UnitedStates
                              ? QStringLiteral("d MMM yyyy")
                              : format);
  return field;
}

}  // namespace topwire
