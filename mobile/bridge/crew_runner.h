#pragma once

#include <QObject>
#include <QPointer>
#include <QThreadPool>

#include "mobile/bridge/crew_desk.h"

#include <atomic>
#include <memory>

namespace lidlark::mobile {

/// Runs errands of the crew one after the other on a thread of their own, so that no screen waits
/// for a network, and brings their answers back to the screens' thread.
class CrewRunner : public QObject
{
    Q_OBJECT

public:
    using QObject::QObject;
    ~CrewRunner() override { stop(); }

    /// @param errand called there with a desk; @param then called here with its answer, unless
    /// @p whose is gone by then.
    template <typename Value, typename Then>
    void run(const CrewDeskPlace &place, QObject *whose,
             std::function<Result<Value>(CrewDesk &)> errand, Then then)
    {
        ++m_running;
        const auto goOn = m_goOn;
        m_pool.setMaxThreadCount(1);
        m_pool.start([this, place, whose = QPointer<QObject>(whose), goOn,
                      errand = std::move(errand), then = std::move(then)] {
            auto desk = CrewDesk::open(place, [goOn] { return goOn->load(); });
            auto answer = std::make_shared<Result<Value>>(desk ? errand(**desk)
                                                               : Result<Value>(desk.error()));
            desk = Error{ErrorCode::NotFound, {}}; // closed before anybody hears of it
            const auto back = [this, whose, then, answer] {
                --m_running;
                if (whose)
                    then(*answer);
                emit ranOne();
            };
            QMetaObject::invokeMethod(this, back, Qt::QueuedConnection);
        });
    }

    [[nodiscard]] bool busy() const { return m_running > 0; }
    /// What was asked for so far stops at its next step.
    void stopSoon();
    /// The same, and waits for it.
    void stop();

signals:
    void ranOne();

private:
    QThreadPool m_pool;
    std::shared_ptr<std::atomic<bool>> m_goOn = std::make_shared<std::atomic<bool>>(true);
    int m_running = 0;
};

} // namespace lidlark::mobile
