/* The whole of libgaugebox. */
#ifndef GAUGEBOX_GAUGEBOX_H
#define GAUGEBOX_GAUGEBOX_H

#include "gaugebox/air.h"
#include "gaugebox/arena.h"
#include "gaugebox/base.h"
#include "gaugebox/buy.h"
#include "gaugebox/conform.h"
#include "gaugebox/count.h"
#include "gaugebox/digest.h"
#include "gaugebox/explain.h"
#include "gaugebox/heat.h"
#include "gaugebox/job.h"
#include "gaugebox/lift.h"
#include "gaugebox/loose.h"
#include "gaugebox/mix.h"
#include "gaugebox/moment.h"
#include "gaugebox/origin.h"
#include "gaugebox/place.h"
#include "gaugebox/plan.h"
#include "gaugebox/quantity.h"
#include "gaugebox/read.h"
#include "gaugebox/sand.h"
#include "gaugebox/shape.h"
#include "gaugebox/sheet.h"
#include "gaugebox/steps.h"
#include "gaugebox/stone.h"
#include "gaugebox/text.h"
#include "gaugebox/weather.h"

#endif
