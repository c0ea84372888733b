#include "mobile/bridge/crew_runner.h"

namespace lidlark::mobile {

void CrewRunner::stopSoon()
{
    *m_goOn = false;
    m_goOn = std::make_shared<std::atomic<bool>>(true); // for what comes after
}

void CrewRunner::stop()
{
    stopSoon();
    m_pool.waitForDone();
}

} // namespace lidlark::mobile
