#pragma once

#include "tests/support/certificates.h"

#include <QString>

namespace lidlark::test {

/// What a test's server is told.
struct DavSettings {
    QString folder; ///< Where its logs and passwords go; its files lie in `files/dav`.
    int port = 0;   ///< With TLS.
    int plainPort = 0;
    Certificate certificate;
};

/// Apache's, in its own language.
QString apacheSettings(const DavSettings &settings);
/// lighttpd's.
QString lighttpdSettings(const DavSettings &settings);

} // namespace lidlark::test
