#include "core/planning/programmes_at_hand.h"

#include "core/programme/programme_reader.h"

#include <algorithm>

namespace topwire {

void ProgrammesAtHand::take(const Orchard& orchard) {
  if (orchard.programmes == taken_) return;
  for (const auto& [id, own] : taken_)
    if (!orchard.programmes.contains(id)) leaveOut(id);
  notes_.clear();
  for (const auto& [id, own] : orchard.programmes) read(own);
  taken_ = orchard.programmes;
}

void ProgrammesAtHand::read(const OwnProgramme& own) {
  const auto before = taken_.find(own.id);
  if (before != taken_.end() && before->second == own && all_.contains(own.id)) return;
  auto programme = readProgramme(own.text, own.id);
  if (programme) {
    all_.insert_or_assign(own.id, std::move(*programme));
    return;
  }
  leaveOut(own.id);
  notes_.emplace_back(phrase("Plan",
                             "The programme %1 of this orchard does not read and is left "
                             "out: %2"),
                      std::vector<Value>{own.id, inEnglish(programme.error().front())});
}

/// A shipped one of that id, from a later Topwire, comes back in its place.
void ProgrammesAtHand::leaveOut(const std::string& id) {
  const auto shipped = shipped_->find(id);
  if (shipped == shipped_->end())
    all_.erase(id);
  else
    all_.insert_or_assign(id, shipped->second);
}

Programmes programmesOf(const Programmes& shipped, const Orchard& orchard) {
  ProgrammesAtHand atHand{shipped};
  atHand.take(orchard);
  return atHand.all();
}

std::vector<const Planting*> plantingsUsing(const Orchard& orchard,
                                            const std::string& programme) {
  std::vector<const Planting*> using_;
  for (const auto& [id, planting] : orchard.plantings)
    if (planting.programme == programme) using_.push_back(&planting);
  std::ranges::sort(using_, {}, [](const Planting* one) { return one->code; });
  return using_;
}

}  // namespace topwire
