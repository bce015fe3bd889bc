#pragma once

#include "core/orchard/records.h"
#include "storage/crew_columns.h"
#include "storage/task_columns.h"

namespace topwire {

constexpr TableOf tableOf(const Settings*) {
  return {"settings", 0};
}

constexpr TableOf tableOf(const Block*) {
  return {"block", 1};
}

constexpr TableOf tableOf(const Planting*) {
  return {"planting", 1};
}

constexpr TableOf tableOf(const Observation*) {
  return {"observation", 1};
}

constexpr TableOf tableOf(const PastStage*) {
  return {"past_stage", 1};
}

constexpr TableOf tableOf(const Measurement*) {
  return {"measurement", 1};
}

constexpr TableOf tableOf(const SeasonTarget*) {
  return {"season_target", 2};
}

constexpr TableOf tableOf(const SeasonClose*) {
  return {"season_close", 1};
}

constexpr TableOf tableOf(const OwnProgramme*) {
  return {"programme", 1};
}

/// The settings' twelve normals have a table of their own.
template <Is<Settings> Record, class Visit>
void columns(Record& settings, Visit& visit) {
  visit("name", settings.name);
  visit("latitude", settings.latitude);
  visit("elevation_um", settings.elevation);
  visit("units", settings.units);
  visit("station", settings.station);
  visit("station_elevation_um", settings.stationElevation);
  visit("records_from", settings.recordsFrom);
  visit("first_leaf_delay_days", settings.firstLeafDelayDays);
  visit("workdays", settings.workdays);
  visit("start_minute", settings.startMinute);
  visit("move_minutes", settings.moveMinutes);
  visit("move_minutes_per_km", settings.moveMinutesPerKm);
  visit("keep_together", settings.keepTogether);
  visit("gang_at_most", settings.gangAtMost);
}

template <Is<Block> Record, class Visit>
void columns(Record& block, Visit& visit) {
  visit("id", block.id);
  visit("name", block.name);
  visit("rows", block.rows);
  visit("row_spacing_um", block.rowSpacing);
  visit("row_length_um", block.rowLength);
  visit("elevation_um", block.elevation);
  visit("minimum_correction", block.minimumCorrection);
  visit("maximum_correction", block.maximumCorrection);
  visit("wires_um", block.wires);
  visit("post_spacing_um", block.postSpacing);
  visit("workers_at_most", block.workersAtMost);
  visit("latitude", block.latitude);
  visit("longitude", block.longitude);
  visit("notes", block.notes);
}

template <Is<Planting> Record, class Visit>
void columns(Record& planting, Visit& visit) {
  visit("id", planting.id);
  visit("block", planting.block);
  visit("code", planting.code);
  visit("cultivar", planting.cultivar);
  visit("rootstock", planting.rootstock);
  visit("kind", planting.kind);
  visit("planted", planting.planted);
  visit("rows", planting.rows);
  visit("tree_spacing_um", planting.treeSpacing);
  visit("trees_per_row", planting.treesPerRow);
  visit("trees", planting.trees);
  visit("vigour", planting.vigour);
  visit("vigour_reason", planting.vigourReason);
  visit("programme", planting.programme);
}

template <Is<Observation> Record, class Visit>
void columns(Record& seen, Visit& visit) {
  visit("id", seen.id);
  visit("planting", seen.planting);
  visit("bbch", seen.bbch);
  visit("day", seen.day);
  visit("who", seen.by);
}

template <Is<PastStage> Record, class Visit>
void columns(Record& past, Visit& visit) {
  visit("id", past.id);
  visit("cultivar", past.cultivar);
  visit("bbch", past.bbch);
  visit("day", past.day);
}

template <Is<Measurement> Record, class Visit>
void columns(Record& taken, Visit& visit) {
  visit("id", taken.id);
  visit("planting", taken.planting);
  visit("measure", taken.measure);
  visit("day", taken.day);
  visit("sample", taken.values);
  visit("who", taken.by);
  visit("note", taken.note);
}

template <Is<SeasonTarget> Record, class Visit>
void columns(Record& target, Visit& visit) {
  visit("planting", target.of.planting);
  visit("season", target.of.season.year);
  visit("vigour", target.vigour);
  visit("vigour_reason", target.vigourReason);
  visit("fruit_from", target.fruitFrom);
  visit("fruit_to", target.fruitTo);
  visit("note", target.note);
}

template <Is<SeasonClose> Record, class Visit>
void columns(Record& close, Visit& visit) {
  visit("season", close.season.year);
  visit("day", close.day);
  visit("who", close.by);
}

template <Is<OwnProgramme> Record, class Visit>
void columns(Record& own, Visit& visit) {
  visit("id", own.id);
  visit("text", own.text);
}

}  // namespace topwire
