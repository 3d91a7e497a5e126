import { Module, type OnModuleInit } from '@nestjs/common';
import { MailedLinksModule } from '../signed-links/mailed-links.module.js';
import { Announcer } from './announcer.js';
import { DeliveriesResolver } from './deliveries.resolver.js';
import { DeliverySender } from './delivery-sender.js';
import { cureAlarm, cureFreezing, protectionMayComeOff } from './kinds/cure-notices.js';
import { energisingAllowed } from './kinds/energising-allowed.js';
import { energisingWithdrawn } from './kinds/energising-withdrawn.js';
import { hookupReady } from './kinds/hookup-ready.js';
import { hookupWithdrawn } from './kinds/hookup-withdrawn.js';
import { weatherHold, weatherHoldSoon } from './kinds/weather-hold.js';
import { weatherHoldLifted } from './kinds/weather-hold-lifted.js';
import { Mailer } from './mailer.js';
import { NoticeKinds } from './notice-kinds.js';
import { NoticesResolver } from './notices.resolver.js';
import { NoticesService } from './notices.service.js';

/** Messages to people: what they say, whom they go to, and sending them. */
@Module({
  imports: [MailedLinksModule],
  providers: [
    Announcer,
    DeliveriesResolver,
    DeliverySender,
    Mailer,
    NoticeKinds,
    NoticesResolver,
    NoticesService,
  ],
  exports: [Announcer, DeliverySender, Mailer, NoticeKinds],
})
export class NoticesModule implements OnModuleInit {
  constructor(private readonly kinds: NoticeKinds) {}

  onModuleInit(): void {
    this.kinds.register(hookupReady, hookupWithdrawn, energisingAllowed, energisingWithdrawn);
    this.kinds.register(cureFreezing, cureAlarm, protectionMayComeOff);
    this.kinds.register(weatherHold, weatherHoldSoon, weatherHoldLifted);
  }
}
