#include "app/paper/tree_form.h"

#include "app/paper/pen.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace topwire {

namespace {

constexpr double middle = 24;
constexpr double soil = 112;

struct Tier {
  double y;
  double reach;
};

/// How high and how wide the cone has grown, and how far the crop has drawn its limbs
/// down at their tips.
struct Growth {
  double top;
  double trunk;
  double droop;
  std::vector<Tier> tiers;
};

/// From the nursery to the seventh leaf: the top wire, at 26, is reached as the second
/// leaf ends, the row's height in the fifth.
const std::array<Growth, 8>& growths() {
  static const std::array<Growth, 8> all{
      Growth{54, 2.0, -4, {{84, 6}, {76, 6}}},
      Growth{44, 2.2, -1, {{84, 9}, {76, 8}}},
      Growth{29, 3.0, -1, {{88, 11}, {80, 11}, {66, 8}}},
      Growth{20, 3.8, -1, {{90, 14}, {82, 14}, {70, 11}, {58, 9}, {44, 6}}},
      Growth{16, 4.2, 0, {{92, 16}, {84, 15}, {72, 13}, {60, 11}, {48, 9}, {36, 6}}},
      Growth{13,
             4.8,
             1,
             {{92, 17}, {84, 16}, {73, 14}, {62, 12}, {50, 10}, {38, 8}, {27, 5}}},
      Growth{
          12,
          5.4,
          2,
          {{91, 18}, {83, 17}, {74, 15}, {65, 13}, {55, 11}, {45, 9}, {34, 7}, {24, 5}}},
      Growth{12,
             6.0,
             3,
             {{90, 19},
              {82, 18},
              {74, 16},
              {65, 14},
              {56, 12},
              {46, 10},
              {36, 8},
              {26, 5}}}};
  return all;
}

/// The limbs of a tier leave the trunk at unequal heights; a new tree has one a tier.
void addTier(TreeForm& form, const Tier& tier, double droop, double width, double side) {
  const double y = tier.y + (side > 0 ? 2.5 : 0);
  form.limbs.push_back({{middle + side, y},
                        {middle + side * tier.reach * 0.55, y - 5},
                        {middle + side * tier.reach, y + droop},
                        width});
}

/// How thick the wall's wood is and how high its uprights stand.
struct WallGrowth {
  double top;
  double trunk;
  double upright;
  double side;  ///< reach of the side shoots
};

const std::array<WallGrowth, 7>& wallGrowths() {
  static const std::array<WallGrowth, 7> all{WallGrowth{46, 2.0, 0, 0},
                                             WallGrowth{78, 2.4, 0, 0},
                                             WallGrowth{62, 3.0, 1.4, 0},
                                             WallGrowth{40, 3.6, 1.7, 2.2},
                                             WallGrowth{27, 4.2, 2.0, 2.6},
                                             WallGrowth{24, 4.8, 2.3, 2.9},
                                             WallGrowth{24, 5.4, 2.6, 3.2}};
  return all;
}

const auto& inLeaf(const auto& all, int leaf) {
  return all.at(
      static_cast<std::size_t>(std::clamp(leaf, 0, static_cast<int>(all.size()) - 1)));
}

constexpr double armY = 92;
constexpr double armReach = 19;
constexpr std::array uprightsOfAnArm{4.0, 11.0, 18.0};

void addUpright(TreeForm& form, const WallGrowth& growth, double x) {
  form.stems.push_back({upright({x, armY}, {x, growth.top}), growth.upright, 1});
  if (growth.side <= 0) return;
  double side = x < middle ? -1 : 1;
  for (double y = armY - 11; y > growth.top + 6; y -= 11, side = -side)
    form.limbs.push_back({{x, y},
                          {x + side * growth.side * 0.6, y - 1},
                          {x + side * growth.side, y + 0.5},
                          weight::twig});
}

void addArm(TreeForm& form, const WallGrowth& growth, double side, bool flat) {
  const QPointF fork{middle, armY};
  const QPointF end = fork + QPointF{side * (flat ? armReach : 13), flat ? 0.0 : -13.0};
  form.stems.push_back({straight(fork, end), growth.trunk * 0.8, 1.4});
  if (!flat) return;
  for (const double x : uprightsOfAnArm) addUpright(form, growth, middle + side * x);
}

}  // namespace

QPointF TreeForm::limbTip(double height) const {
  if (limbs.empty()) return knee + (top - knee) * height;
  const double last = static_cast<double>(limbs.size() - 1);
  return limbs[static_cast<std::size_t>(std::lround(height * last))].tip;
}

TreeForm spindle(int leaf) {
  const Growth& growth = inLeaf(growths(), leaf);
  TreeForm form;
  for (std::size_t i = 0; i < growth.tiers.size(); ++i) {
    const double width = leaf > 2 ? weight::limb : weight::twig;
    const bool lone = leaf < 2;
    if (!lone || i % 2 == 1) addTier(form, growth.tiers[i], growth.droop, width, -1);
    if (!lone || i % 2 == 0) addTier(form, growth.tiers[i], growth.droop, width, 1);
  }
  form.top = {middle, growth.top};
  form.stems.push_back(
      {{{middle, soil}, {middle + 0.3, 90}, {middle - 0.3, 60}, form.top},
       growth.trunk,
       1.2});
  form.leader = form.top + QPointF{0, 12};
  form.knee = {middle, 98};
  form.foot = {middle, 107};
  return form;
}

TreeForm wallTree(int leaf) {
  const WallGrowth& growth = inLeaf(wallGrowths(), leaf);
  TreeForm form;
  form.wires = 5;
  form.knee = {middle, 100};
  form.foot = {middle, 107};
  form.top = {middle, growth.top};
  const double stop = leaf < 1 ? growth.top : armY;
  if (leaf >= 1)
    for (const double side : {-1.0, 1.0}) addArm(form, growth, side, leaf >= 2);
  if (leaf == 1) form.top.rx() += 13;
  if (leaf >= 2) form.top.rx() += uprightsOfAnArm[1];
  form.stems.push_back({straight({middle, soil}, {middle, stop}), growth.trunk, 2});
  form.leader = form.top + QPointF{0, 10};
  return form;
}

}  // namespace topwire
