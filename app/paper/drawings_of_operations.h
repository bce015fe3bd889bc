#pragma once

#include "app/paper/drawing.h"

namespace topwire {

// drawings_before_planting.cpp
Drawing orderTrees();
Drawing soilTest();
Drawing orderTrellis();
Drawing raiseTrellis();
Drawing plantTrees();
Drawing replantGaps();

// drawings_of_the_leader.cpp
Drawing firstTie();
Drawing rubRivals();
Drawing secondRub();
Drawing leaderTie();
Drawing pinchLaterals();
Drawing notchBareWood();
Drawing heightCut();
Drawing tieCheck();

// drawings_of_limbs.cpp
Drawing featherRemoval();
Drawing clothesPins();
Drawing limbBending();
Drawing dormantPruning();
Drawing renewalCuts();
Drawing summerPruning();
Drawing limbClips();
Drawing brushSweep();

// drawings_of_fruit.cpp
Drawing flowerRemoval();
Drawing handThinning();
Drawing chemicalThinning();
Drawing blightPatrol();
Drawing leafFallRound();

// drawings_of_the_ground.cpp
Drawing rootPruning();
Drawing suckerRemoval();
Drawing trellisCheck();
Drawing guardsOn();
Drawing guardsOff();
Drawing whitePaint();
Drawing weedStrip();
Drawing nitrogenSplit();
Drawing waterCheck();

}  // namespace topwire
