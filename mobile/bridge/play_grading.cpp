#include "mobile/bridge/play_in_hand.h"

#include "mobile/bridge/text.h"

namespace lidlark::mobile {

bool PlayInHand::tapGrading(const QString &name)
{
    const auto way = play::wayNames.parse(toCore(name));
    const catalogue::Activity *entry = activity();
    if (!way || *way == play::Way::AsWritten || entry == nullptr)
        return false;
    usecase::Progress progress = *m_progress;
    progress.grading = play::afterTap(*entry, progress.grading, *way);
    progress.gradingFrom = usecase::GradingFrom::Nobody;
    return keep(progress);
}

play::GradingUsed PlayInHand::grading() const
{
    return m_progress ? m_progress->grading : play::GradingUsed{};
}

usecase::GradingFrom PlayInHand::gradingFrom() const
{
    return m_progress ? m_progress->gradingFrom : usecase::GradingFrom::Nobody;
}

/// How it was played stands first next time. The play has ended, whether or not this can be kept.
void PlayInHand::keepGrading()
{
    const auto family = m_household->family();
    if (family)
        report(usecase::keepGrading(m_household->workplace(), *family, m_progress->activity,
                                    m_progress->grading));
}

} // namespace lidlark::mobile
