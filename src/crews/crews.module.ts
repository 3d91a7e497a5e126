import { Global, Module } from '@nestjs/common';
import { CrewChangedResolver } from './crew-changed.resolver.js';
import { CrewExceptionsService } from './crew-exceptions.service.js';
import { CrewReader } from './crew-reader.js';
import { CrewsResolver } from './crews.resolver.js';
import { CrewsService } from './crews.service.js';
import { EquipmentReader } from './equipment-reader.js';
import { EquipmentResolver } from './equipment.resolver.js';
import { EquipmentService } from './equipment.service.js';

/** Crews with their hours, and the company's equipment. */
@Global()
@Module({
  providers: [
    CrewReader,
    CrewsService,
    CrewExceptionsService,
    CrewsResolver,
    CrewChangedResolver,
    EquipmentReader,
    EquipmentService,
    EquipmentResolver,
  ],
  exports: [CrewReader, EquipmentReader],
})
export class CrewsModule {}
