#pragma once

#include "core/base/phrase.h"

#include <QString>

#include <optional>

namespace topwire {

/// Worker-minutes of hours as a person types them: in the locale's own way, or with a
/// point, which keypads give. Nothing where it is no number of hours, or one beyond all
/// reason.
std::optional<int> readHours(const QString& text);
/// What is said of such a text.
Sentence noHoursSentence(const QString& text);

}  // namespace topwire
