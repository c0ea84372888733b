#pragma once

#include "graph.h"

namespace lidlark::mobile {

class Notifier;

/// `lidlark --remind`: says the reminder of the day if it is due, and is done. For a timer of the
/// system, while the app is closed. Needs an application object, no screen.
/// @returns 0 when there was nothing to say or it was said; 1 when nobody shows it, with the reason
/// on standard error.
int remindOnce(const StartOptions &options, Notifier &notifier);

} // namespace lidlark::mobile
