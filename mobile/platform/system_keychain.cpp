#include "mobile/platform/system_keychain.h"

#include <QEventLoop>
#include <QTimer>
#include <qt6keychain/keychain.h>

namespace lidlark::mobile {

namespace {

constexpr int longestWaitMs = 5000;

template <typename Job> Job *jobFor(const QString &name)
{
    auto *job = new Job(QStringLiteral("lidlark"));
    job->setKey(name);
    job->setInsecureFallback(false); // a plain file of ours is better known to whoever reads this
    job->setAutoDelete(false);
    return job;
}

/// Runs @p job. @returns whether it ended in time; then @p look has looked at it.
template <typename Job, typename Look> bool ran(Job *job, Look look)
{
    QEventLoop loop;
    bool ended = false;
    QObject::connect(job, &QKeychain::Job::finished, &loop, [&] {
        ended = true;
        loop.quit();
    });
    QTimer::singleShot(longestWaitMs, &loop, &QEventLoop::quit);
    job->start();
    if (!ended)
        loop.exec();
    if (!ended) {
        job->setAutoDelete(true); // whoever is asked may still answer it
        return false;
    }
    look(*job);
    job->deleteLater();
    return true;
}

bool isWell(const QKeychain::Job &job)
{
    return job.error() == QKeychain::NoError;
}

} // namespace

Keychain::Answer SystemKeychain::read(const QString &name)
{
    Answer answer;
    (void)ran(jobFor<QKeychain::ReadPasswordJob>(name), [&](QKeychain::ReadPasswordJob &job) {
        answer.came = isWell(job) || job.error() == QKeychain::EntryNotFound;
        if (isWell(job))
            answer.value = job.binaryData();
    });
    return answer;
}

bool SystemKeychain::keep(const QString &name, const QByteArray &value)
{
    bool kept = false;
    auto *job = jobFor<QKeychain::WritePasswordJob>(name);
    job->setBinaryData(value);
    (void)ran(job, [&](QKeychain::Job &done) { kept = isWell(done); });
    return kept;
}

bool SystemKeychain::forget(const QString &name)
{
    bool gone = false;
    (void)ran(jobFor<QKeychain::DeletePasswordJob>(name), [&](QKeychain::Job &job) {
        gone = isWell(job) || job.error() == QKeychain::EntryNotFound;
    });
    return gone;
}

} // namespace lidlark::mobile
