#pragma once

#include "mobile/platform/notifier.h"

namespace lidlark::mobile {

/// Where nothing can be shown outside the app.
class SilentNotifier final : public Notifier
{
    Q_OBJECT

public:
    using Notifier::Notifier;

    void say(const QString & /*line*/) override { emit said(false); }
    void ask() override { emit answered(false); }
};

} // namespace lidlark::mobile
