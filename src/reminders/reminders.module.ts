import { Module, type OnModuleInit } from '@nestjs/common';
import { NoticeKinds } from '../notices/notices.face.js';
import { NoticesModule } from '../notices/notices.module.js';
import { ChangeSteps } from '../platform/change/change-steps.js';
import { ReminderFirer } from './reminder-firer.js';
import { demandOneDerivationEach, reminderKinds } from './reminder-kinds.js';
import { reminderNotice } from './reminder-notice.js';
import { RemindersResolver } from './reminders.resolver.js';
import { RemindersService } from './reminders.service.js';
import { remindersStep } from './reminders.step.js';

/** Notices with a due time that follows from the plan and moves with it. */
@Module({
  imports: [NoticesModule],
  providers: [ReminderFirer, RemindersResolver, RemindersService],
  exports: [ReminderFirer],
})
export class RemindersModule implements OnModuleInit {
  constructor(
    private readonly steps: ChangeSteps,
    private readonly kinds: NoticeKinds,
  ) {}

  /** @throws Error when a kind of reminder has no derivation, or two. */
  onModuleInit(): void {
    demandOneDerivationEach(reminderKinds);
    this.steps.register('reminders', remindersStep);
    this.kinds.register(...reminderKinds.map(reminderNotice));
  }
}
